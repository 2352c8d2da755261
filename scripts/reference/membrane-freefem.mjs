/**
 * Makes packages/engine/src/membrane/fixtures/large-stretch.json with FreeFem++ (Debian package
 * freefem++): a sheet with a stiffening law and a material direction that turns, its border carried to a
 * larger outline, 15 to 30 % of stretch, on the same triangles. Run: node scripts/reference/membrane-freefem.mjs
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { referenceMesh } from './membrane-mesh.mjs';

const LAWS = {
  along1: { slope: 0.27, stiffening: 0.0175, limit: 0.67 },
  along2: { slope: 0.54, stiffening: 0.042, limit: 0.46 },
  coupling: 0.1,
  shear: 0.05,
};

/** Where a border node goes. */
const carried = (x, y) => [
  1.22 * x + 0.05 * y + 5 * Math.sin(y / 40),
  1.17 * y - 0.03 * x + 4 * Math.sin(x / 50),
];

const mesh = referenceMesh();
const held = mesh.border.map((node) => {
  const [x, y] = carried(mesh.points[2 * node], mesh.points[2 * node + 1]);
  return { node, x: Number(x.toFixed(6)), y: Number(y.toFixed(6)) };
});
const folder = mkdtempSync(join(tmpdir(), 'membrane-'));
const nodes = mesh.points.length / 2;

const onBorder = new Set(mesh.border);
const sides = () => {
  const seen = new Map();
  for (let k = 0; k < mesh.triangles.length; k++) {
    const [i, j] = [mesh.triangles[k], mesh.triangles[k % 3 === 2 ? k - 2 : k + 1]];
    const key = `${Math.min(i, j)} ${Math.max(i, j)}`;
    seen.set(key, seen.has(key) ? undefined : [i, j]);
  }
  return [...seen.values()].filter((side) => side !== undefined);
};

const meshText = () => {
  const border = sides();
  const lines = [`${nodes} ${mesh.triangles.length / 3} ${border.length}`];
  for (let i = 0; i < nodes; i++)
    lines.push(`${mesh.points[2 * i]} ${mesh.points[2 * i + 1]} ${onBorder.has(i) ? 1 : 0}`);
  for (let k = 0; k < mesh.triangles.length; k += 3)
    lines.push(
      `${mesh.triangles
        .slice(k, k + 3)
        .map((i) => i + 1)
        .join(' ')} 0`,
    );
  for (const [i, j] of border) lines.push(`${i + 1} ${j + 1} 1`);
  return `${lines.join('\n')}\n`;
};

const list = (values) => `${values.length}\n${values.join('\n')}\n`;

/** Displacement to start from and to prescribe: the border's own, the law of `carried` inside. */
const start = (axis) => {
  const moved = Array.from({ length: nodes }, (_, i) => {
    const place = mesh.points.slice(2 * i, 2 * i + 2);
    return carried(...place)[axis] - place[axis];
  });
  for (const { node, x, y } of held) moved[node] = [x, y][axis] - mesh.points[2 * node + axis];
  return moved;
};

const program = () => {
  const { along1: a, along2: b, coupling, shear } = LAWS;
  const law = (l, e) =>
    `(${l.slope}*${e}+${l.stiffening}*(1/(1-${e}/${l.limit})^2-1-2*${e}/${l.limit}))`;
  const slope = (l, e) => `(${l.slope}+2*${l.stiffening}/${l.limit}*(1/(1-${e}/${l.limit})^3-1))`;
  const energy = (l, e) =>
    `(${l.slope}*${e}^2/2+${l.stiffening}*${l.limit}*(1/(1-${e}/${l.limit})-1-${e}/${l.limit}-(${e}/${l.limit})^2))`;
  return `
mesh Th = readmesh("${folder}/piece.msh");
fespace Vh(Th, [P1, P1]);
fespace Ph(Th, P1);
fespace Dh(Th, P0);
Ph su, sv;
Dh turn;
{ ifstream file("${folder}/u.txt"); file >> su[]; }
{ ifstream file("${folder}/v.txt"); file >> sv[]; }
{ ifstream file("${folder}/turn.txt"); file >> turn[]; }
Vh [u, v] = [su, sv];
Vh [du, dv], [w, z];
Dh ct = cos(turn), st = sin(turn);
macro F1x() ((1+dx(u))*ct+dy(u)*st) //
macro F1y() (dx(v)*ct+(1+dy(v))*st) //
macro F2x() (-(1+dx(u))*st+dy(u)*ct) //
macro F2y() (-dx(v)*st+(1+dy(v))*ct) //
macro D1(p) (dx(p)*ct+dy(p)*st) //
macro D2(p) (-dx(p)*st+dy(p)*ct) //
macro L1() (sqrt(F1x^2+F1y^2)) //
macro L2() (sqrt(F2x^2+F2y^2)) //
macro E1() (L1-1) //
macro E2() (L2-1) //
macro C12() (F1x*F2x+F1y*F2y) //
macro Q1() (${law(a, 'E1')}+${coupling}*E2) //
macro Q2() (${law(b, 'E2')}+${coupling}*E1) //
macro S11() (Q1/L1) //
macro S22() (Q2/L2) //
macro S12() (${shear}*C12) //
macro dE1(p, q) ((F1x*D1(p)+F1y*D1(q))/L1) //
macro dE2(p, q) ((F2x*D2(p)+F2y*D2(q))/L2) //
macro dC12(p, q) (F2x*D1(p)+F2y*D1(q)+F1x*D2(p)+F1y*D2(q)) //
macro dS11(p, q) (((${slope(a, 'E1')})*dE1(p,q)+${coupling}*dE2(p,q))/L1-Q1*dE1(p,q)/L1^2) //
macro dS22(p, q) (((${slope(b, 'E2')})*dE2(p,q)+${coupling}*dE1(p,q))/L2-Q2*dE2(p,q)/L2^2) //
for (int step = 0; step < 30; step++) {
  solve Newton([du, dv], [w, z], solver=UMFPACK) =
    int2d(Th, qft=qf1pT)(
      dS11(du,dv)*(F1x*D1(w)+F1y*D1(z)) + S11*(D1(du)*D1(w)+D1(dv)*D1(z))
    + dS22(du,dv)*(F2x*D2(w)+F2y*D2(z)) + S22*(D2(du)*D2(w)+D2(dv)*D2(z))
    + ${shear}*dC12(du,dv)*dC12(w,z)
    + S12*(D1(du)*D2(w)+D2(du)*D1(w)+D1(dv)*D2(z)+D2(dv)*D1(z)))
  + int2d(Th, qft=qf1pT)(
      S11*(F1x*D1(w)+F1y*D1(z)) + S22*(F2x*D2(w)+F2y*D2(z)) + S12*dC12(w,z))
  + on(1, du=0, dv=0);
  u[] += du[];
  cout << "STEP " << step << " " << du[].linfty << endl;
  if (du[].linfty < 1e-12) break;
}
real energy = int2d(Th, qft=qf1pT)(${energy(a, 'E1')}+${energy(b, 'E2')}+${coupling}*E1*E2+${shear}*C12^2/2);
Dh l1 = L1, l2 = L2, s11 = S11, s22 = S22, s12 = S12;
Ph ru = u, rv = v;
ofstream out("${folder}/out.txt");
out.precision(15);
out << energy << endl;
for (int i = 0; i < Th.nv; i++) out << ru[][i] << " " << rv[][i] << endl;
for (int k = 0; k < Th.nt; k++) out << l1[][k] << " " << l2[][k] << " " << s11[][k] << " " << s22[][k] << " " << s12[][k] << endl;
`;
};

writeFileSync(join(folder, 'piece.msh'), meshText());
writeFileSync(join(folder, 'u.txt'), list(start(0)));
writeFileSync(join(folder, 'v.txt'), list(start(1)));
writeFileSync(join(folder, 'turn.txt'), list(mesh.directions));
writeFileSync(join(folder, 'piece.edp'), program());
const log = execFileSync('FreeFem++', ['-nw', '-v', '0', join(folder, 'piece.edp')], {
  encoding: 'utf8',
});
console.log(log);

const [energy, ...rows] = readFileSync(join(folder, 'out.txt'), 'utf8').trim().split('\n');
const numbers = rows.map((row) => row.trim().split(/\s+/).map(Number));
const places = numbers
  .slice(0, nodes)
  .flatMap(([u, v], i) => [
    Number((mesh.points[2 * i] + u).toFixed(10)),
    Number((mesh.points[2 * i + 1] + v).toFixed(10)),
  ]);
const fields = numbers.slice(nodes);
writeFileSync(
  new URL('../../packages/engine/src/membrane/fixtures/large-stretch.json', import.meta.url),
  `${JSON.stringify({
    from: 'FreeFem++ by scripts/reference/membrane-freefem.mjs',
    laws: LAWS,
    ...mesh,
    held,
    energy: Number(energy),
    places,
    stretch: fields.map(([l1, l2]) => [l1, l2]),
    stress: fields.map((field) => field.slice(2)),
  })}\n`,
);
