import { expect, it } from 'vitest';
import { endLeftovers, run } from './run.mjs';

const isAlive = (pid: number) => {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
};

it.runIf(process.platform === 'linux')(
  'a process that a command leaves behind is found and ended',
  async () => {
    // A grandchild in its own session, as browsers start theirs.
    const script =
      "const c = require('child_process').spawn('sleep', ['60'], { detached: true, stdio: 'ignore' }); c.unref(); process.exit(c.pid % 250)";
    const { code } = await run('node', ['-e', script], { cwd: '.' });
    expect(code).toBeGreaterThanOrEqual(0);
    expect(endLeftovers()).toBe(1);
    await expect.poll(() => endLeftovers()).toBe(0);
    expect(isAlive(process.pid)).toBe(true);
  },
);

it('a command over its time limit is ended and fails', async () => {
  const { code, ms } = await run('sleep', ['30'], { cwd: '.', limitMs: 100 });
  expect(code).toBe(1);
  // It would have taken 30 s; 10 s leaves room for a busy machine.
  expect(ms).toBeLessThan(10_000);
});
