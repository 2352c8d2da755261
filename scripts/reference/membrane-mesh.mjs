/**
 * Mesh of the membrane's reference cases: a four-cornered piece with bowed sides, cells of two triangles
 * with alternating diagonals and uneven spacing, and a material direction that turns across the piece.
 */
const [NX, NY] = [8, 7];

const bilinear = (s, t) => [
  200 * s * (1 - t) + 180 * s * t + 15 * t * (1 - s) + 6 * Math.sin(3 * t) * s,
  20 * s * (1 - t) + 170 * t * (1 - s) + 160 * s * t + 8 * Math.sin(3 * s) * (1 - t),
];
const uneven = (t) => t + 0.08 * Math.sin(2 * Math.PI * t);
/** Six decimals: every program reads the same numbers. */
const rounded = (value) => Number(value.toFixed(6));

const node = (i, j) => j * (NX + 1) + i;

const cell = (i, j) => {
  const [a, b, c, d] = [node(i, j), node(i + 1, j), node(i + 1, j + 1), node(i, j + 1)];
  return (i + j) % 2 === 0 ? [a, b, c, a, c, d] : [a, b, d, b, c, d];
};

const grid = (nx, ny, put) =>
  Array.from({ length: ny }, (_, j) =>
    Array.from({ length: nx }, (_, i) => put(i, j)).flat(),
  ).flat();

export const referenceMesh = () => {
  const points = grid(NX + 1, NY + 1, (i, j) =>
    bilinear(uneven(i / NX), uneven(j / NY)).map(rounded),
  );
  const triangles = grid(NX, NY, cell);
  const border = grid(NX + 1, NY + 1, (i, j) =>
    i === 0 || i === NX || j === 0 || j === NY ? [node(i, j)] : [],
  );
  const directions = Array.from({ length: triangles.length / 3 }, (_, e) => {
    const corners = [0, 1, 2].map((k) => triangles[3 * e + k]);
    const x = corners.reduce((sum, i) => sum + points[2 * i], 0) / 3;
    const y = corners.reduce((sum, i) => sum + points[2 * i + 1], 0) / 3;
    return rounded(0.25 + 0.003 * x - 0.002 * y);
  });
  return { points, triangles, border, directions };
};
