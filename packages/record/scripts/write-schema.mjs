// Writes schema/dryflat-garment-N.schema.json from the schema that reading uses.
// Run: npm run schema -w @dryflat/record
import { mkdirSync, writeFileSync } from 'node:fs';
import { build } from 'esbuild';

const here = new URL('../', import.meta.url);
const { outputFiles } = await build({
  absWorkingDir: here.pathname,
  entryPoints: ['src/json-schema.ts'],
  bundle: true,
  format: 'esm',
  platform: 'node',
  write: false,
});
const module = `data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`;
const { SCHEMA_FILE, schemaText } = await import(module);

const file = new URL(`schema/${SCHEMA_FILE}`, here);
mkdirSync(new URL('schema/', here), { recursive: true });
writeFileSync(file, schemaText());
console.log(`wrote ${file.pathname}`);
