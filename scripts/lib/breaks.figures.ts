import { planningAtImport } from './at-import.mjs';
import { fixedWaits } from './fixed-waits.mjs';
import { ROOT } from './root.mjs';
import { run } from './run.mjs';

export async function* figures(full: boolean) {
  yield {
    name: 'waits for a time to pass in browser tests',
    value: fixedWaits().length,
    unit: '',
    goal: { exactly: 0 },
  };
  yield {
    name: 'test files that plan, draw or start a program while they are imported',
    value: planningAtImport().files.length,
    unit: '',
    goal: { exactly: 0 },
  };
  if (!full) return;
  const { code, ms } = await run('node', ['scripts/verify.mjs'], { cwd: ROOT, quiet: true });
  if (code !== 0) throw new Error('npm test did not pass');
  yield { name: 'npm test', value: ms / 60_000, unit: 'min', goal: { most: 12 } };
}
