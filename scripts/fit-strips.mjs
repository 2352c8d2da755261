// Fits the stretch law to every row of the load-extension table, prints the residual of each
// reading in points of extension, and writes the constants that the engine uses.
//   node scripts/fit-strips.mjs            print, and write packages/engine/src/fabric/stretch/strips.ts
//   node scripts/fit-strips.mjs --print    print only
import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = fileURLToPath(new URL('../packages/engine/src/fabric/stretch/', import.meta.url));
const bundled = await build({
  stdin: {
    contents: `export * from './fit-strips.ts'; export { stripsSource } from './strips-source.ts';`,
    resolveDir: here,
    loader: 'ts',
  },
  bundle: true,
  write: false,
  platform: 'node',
  format: 'esm',
  logLevel: 'error',
});
const code = bundled.outputFiles[0].text;
const { fitAll, stripsSource } = await import(`data:text/javascript,${encodeURIComponent(code)}`);

const fits = fitAll();
for (const [name, fit] of fits) {
  const residuals = fit.residuals.map((r) => r.toFixed(2).padStart(6)).join(' ');
  console.log(`${name.padEnd(26)} worst ${fit.worst.toFixed(2)}   ${residuals}`);
}
if (!process.argv.includes('--print')) await writeFile(`${here}strips.ts`, stripsSource(fits));
