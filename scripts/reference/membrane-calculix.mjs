/**
 * Makes packages/engine/src/membrane/fixtures/linear.json with CalculiX (Debian package calculix-ccx):
 * linear orthotropic plane stress, three-node triangles of unit thickness, material axes turned in each
 * triangle, left and right sides held and moved apart, the others free.
 * Run: node scripts/reference/membrane-calculix.mjs
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { referenceMesh } from './membrane-mesh.mjs';

/** Stiffness in material lines [[Y1, c, 0], [c, Y2, 0], [0, 0, G]], N/mm. */
const MATERIAL = { y1: 0.27, y2: 0.54, coupling: 0.1, shear: 0.05 };

const mesh = referenceMesh();
const nodes = mesh.points.length / 2;
const [left, right] = [0, 1].map((side) => mesh.border.filter((node) => node % 9 === 8 * side));
const held = [...left, ...right].map((node) => {
  const y = mesh.points[2 * node + 1];
  return right.includes(node)
    ? { node, x: 10, y: Number((0.02 * y).toFixed(6)) }
    : { node, x: 0, y: Number((-0.01 * y).toFixed(6)) };
});

const engineering = () => {
  const { y1, y2, coupling: c, shear } = MATERIAL;
  const [e1, e2, nu12] = [y1 - (c * c) / y2, y2 - (c * c) / y1, c / y2];
  // Out of the plane nothing is coupled: ν₁₃ = ν₂₃ = 0, and E₃, G₁₃, G₂₃ do not matter.
  return `${e1}, ${e2}, ${e1}, ${nu12}, 0., 0., ${shear}, ${shear},\n${shear}, 293.`;
};

const input = () => {
  const elements = mesh.directions.map((_, e) => e + 1);
  return [
    '*NODE, NSET=ALL',
    ...Array.from(
      { length: nodes },
      (_, i) => `${i + 1}, ${mesh.points[2 * i]}, ${mesh.points[2 * i + 1]}, 0.`,
    ),
    '*ELEMENT, TYPE=CPS3, ELSET=SHEET',
    ...elements.map(
      (e) =>
        `${e}, ${mesh.triangles
          .slice(3 * e - 3, 3 * e)
          .map((i) => i + 1)
          .join(', ')}`,
    ),
    ...elements.flatMap((e) => [`*ELSET, ELSET=E${e}`, `${e}`]),
    '*MATERIAL, NAME=KNIT',
    '*ELASTIC, TYPE=ENGINEERING CONSTANTS',
    engineering(),
    ...elements.flatMap((e) => {
      const [cos, sin] = [Math.cos(mesh.directions[e - 1]), Math.sin(mesh.directions[e - 1])];
      return [`*ORIENTATION, NAME=O${e}`, `${cos}, ${sin}, 0., ${-sin}, ${cos}, 0.`];
    }),
    ...elements.flatMap((e) => [
      `*SOLID SECTION, ELSET=E${e}, MATERIAL=KNIT, ORIENTATION=O${e}`,
      '1.',
    ]),
    '*STEP',
    '*STATIC',
    '*BOUNDARY',
    ...held.flatMap(({ node, x, y }) => [`${node + 1}, 1, 1, ${x}`, `${node + 1}, 2, 2, ${y}`]),
    '*NODE PRINT, NSET=ALL',
    'U, RF',
    '*END STEP',
  ].join('\n');
};

const folder = mkdtempSync(join(tmpdir(), 'membrane-'));
writeFileSync(join(folder, 'sheet.inp'), `${input()}\n`);
execFileSync('ccx', ['sheet'], { cwd: folder });
const blocks = readFileSync(join(folder, 'sheet.dat'), 'utf8').split(/^ (?=displacements|forces)/m);
const block = (name) =>
  blocks
    .find((text) => text.startsWith(name))
    .split('\n')
    .slice(1)
    .filter((line) => line.trim() !== '')
    .map((line) => line.trim().split(/\s+/).slice(1, 3).map(Number));
writeFileSync(
  new URL('../../packages/engine/src/membrane/fixtures/linear.json', import.meta.url),
  `${JSON.stringify({
    from: 'CalculiX by scripts/reference/membrane-calculix.mjs',
    material: MATERIAL,
    ...mesh,
    held,
    moved: block('displacements').flat(),
    forces: block('forces').flat(),
  })}\n`,
);
