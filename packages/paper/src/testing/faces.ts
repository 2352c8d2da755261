import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { FACE_FILES } from '../type/face-files.ts';
import { facesFrom } from '../type/faces.ts';

const { resolve } = createRequire(import.meta.url);

/** The faces as a test reads them, from the installed packages. */
export const testFaces = facesFrom(
  new Map(FACE_FILES.map(({ name, file }) => [name, readFileSync(resolve(file))])),
);
