import { createServer } from 'node:net';
import { expect, it } from 'vitest';
import { nextFreePort, portComplaint, readPort, USUAL_PORT } from './port.mjs';

it.each([undefined, '', ' '])('PORT %j is the usual port', (given) => {
  expect(readPort(given)).toEqual({ port: USUAL_PORT });
});

it.each([
  ['0', 0],
  ['8080', 8080],
  ['65535', 65535],
])('PORT %j is itself', (given, port) => {
  expect(readPort(given)).toEqual({ port });
});

it.each(['abc', '-1', '65536', '80.5', '0x50', '1e3'])('PORT %j is explained', (given) => {
  expect(readPort(given)).toEqual({
    complaint: `PORT is "${given}", which is not a port. Give a whole number from 1024 to 65535, or leave it out for ${USUAL_PORT}.`,
  });
});

it('the next free port is past the taken one and can be listened on', async () => {
  const taken = createServer();
  await new Promise<void>((resolve) => taken.listen(0, '127.0.0.1', resolve));
  const port = (taken.address() as { port: number }).port;
  const free = await nextFreePort(port);
  expect(free).toBeGreaterThan(port);
  const other = createServer();
  await new Promise<void>((resolve) => other.listen(free ?? 0, '127.0.0.1', resolve));
  taken.close();
  other.close();
});

it('a taken port names the one to take', () => {
  expect(portComplaint(4747, 'EADDRINUSE', 4748)).toBe(
    'Port 4747 is taken: another program, or another Dryflat, listens on it. Stop that one, or choose another: PORT=4748 npm start',
  );
  expect(portComplaint(80, 'EACCES', 4748)).toContain('special rights');
});
