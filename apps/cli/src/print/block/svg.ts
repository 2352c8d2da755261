import {
  type BlockPlan,
  type MatSpec,
  type PiecePlan,
  type PinPlaced,
  scaleEnd,
} from '@dryflat/engine/blocking';
import { formatLength, formatRange, mm } from '@dryflat/engine/units';
import { type GarmentRecord, goingOut } from '@dryflat/record';
import { inUnits, type Units } from '../../faults.ts';
import { landmarkName, type Words } from '../words.ts';
import { edgeWord, named, PIN_WORDS } from './words.ts';

/** Units of the picture are millimetres of the mat. */
const MARGIN = 40;
const LINE = 26;
const TEXT = 18;

const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

const at = (value: number): string => String(Math.round(value * 10) / 10 + 0);

/** Lightness falls evenly, so that the order of the steps shows to every kind of colour sight and in grey. */
const RAMP = ['#f4ecd8', '#e3cf9b', '#c3b183', '#8f9a86', '#5c7f8a', '#33597f', '#1c2e5a'];

const shade = (share: number): string =>
  RAMP[Math.min(RAMP.length - 1, Math.floor(share * RAMP.length))]!;

const field = ({ stretchUse }: PiecePlan): string => {
  const { points, triangles, overWet } = stretchUse.field;
  const end = scaleEnd(stretchUse.overWet);
  const paths = new Map<string, string>();
  for (let t = 0; t < triangles.length; t += 3) {
    const nodes = triangles.slice(t, t + 3);
    const corners = nodes.map((node) => `${at(points[2 * node]!)} ${at(points[2 * node + 1]!)}`);
    const mean = nodes.reduce((sum, node) => sum + overWet[node]! / 3, 0);
    const fill = shade(mean / end);
    paths.set(fill, `${paths.get(fill) ?? ''}M${corners.join('L')}Z`);
  }
  return [...paths]
    .map(([fill, d]) => `<path d="${d}" fill="${fill}" stroke="${fill}" stroke-width="0.6"/>`)
    .join('\n');
};

const polygon = (points: readonly { x: number; y: number }[], style: string): string =>
  `<polygon points="${points.map(({ x, y }) => `${at(x)},${at(y)}`).join(' ')}" fill="none" ${style}/>`;

const matLines = ({ widthMm, heightMm, tileMm }: MatSpec): string => {
  const lines: string[] = [
    `<rect width="${at(widthMm)}" height="${at(heightMm)}" fill="#fbfaf7" stroke="#55524a" stroke-width="2"/>`,
  ];
  // A grid finer than this is no grid of tiles, and would fill the picture.
  if (tileMm < 20) return lines.join('\n');
  for (let x = tileMm; x < widthMm - 1; x += tileMm)
    lines.push(`<line x1="${at(x)}" y1="0" x2="${at(x)}" y2="${at(heightMm)}" stroke="#d6d2c6"/>`);
  for (let y = tileMm; y < heightMm - 1; y += tileMm)
    lines.push(`<line x1="0" y1="${at(y)}" x2="${at(widthMm)}" y2="${at(y)}" stroke="#d6d2c6"/>`);
  return lines.join('\n');
};

const mark = ({ kind, along }: PinPlaced): string => {
  if (along !== null) {
    const [x, y] = [(along.dx * along.lengthMm) / 2, (along.dy * along.lengthMm) / 2];
    const width = kind === 'comb' ? 7 : 2.5;
    return `<line x1="${at(-x)}" y1="${at(-y)}" x2="${at(x)}" y2="${at(y)}" stroke="#b3261e" stroke-width="${width}"/>`;
  }
  return kind === 't-pin'
    ? '<path d="M-7 -4H7M0 -4V6" fill="none" stroke="#b3261e" stroke-width="2.5"/>'
    : '<circle r="3.5" fill="#b3261e"/>';
};

/** Numbers stand outside the piece, away from its middle. */
const pin = (each: PinPlaced, middle: { x: number; y: number }, words: Words): string => {
  const [dx, dy] = [each.xMm - middle.x, each.yMm - middle.y];
  const size = Math.hypot(dx, dy) || 1;
  const title = `${each.order}: ${PIN_WORDS[each.kind]}, ${edgeWord(each.edge, words)}, ${each.pullN.toFixed(1)} N`;
  return `<g transform="translate(${at(each.xMm)} ${at(each.yMm)})"><title>${escaped(title)}</title>${mark(each)}<text x="${at((17 * dx) / size)}" y="${at((17 * dy) / size + 5)}" text-anchor="middle" font-size="14">${each.order}</text></g>`;
};

const legend = (x: number, y: number, end: number): string => {
  const step = 34;
  const boxes = RAMP.map(
    (fill, k) =>
      `<rect x="${at(x + k * step)}" y="${at(y)}" width="${step}" height="14" fill="${fill}"/>`,
  );
  const ends = [0, 0.5, 1].map(
    (share) =>
      `<text x="${at(x + share * step * RAMP.length)}" y="${at(y + 30)}" text-anchor="middle" font-size="14">${at(100 * share * end)} %</text>`,
  );
  return `${boxes.join('')}${ends.join('')}<text x="${at(x + step * RAMP.length + 40)}" y="${at(y + 13)}" font-size="${TEXT}">over its wet size</text>`;
};

const texts = (plan: PiecePlan, units: Units, words: Words): string[] => [
  ...plan.measurements.map(({ landmark, targetMm, reachedMm, afterDryingMm }) => {
    const span = (r: { p05Mm: number; p95Mm: number }) => formatRange(r.p05Mm, r.p95Mm, units);
    return `${landmarkName(landmark, words)}: wanted ${formatLength(mm(targetMm), { unit: units })}, on the mat ${span(reachedMm)}, dried ${span(afterDryingMm)}`;
  }),
  ...plan.couldNot.map(({ what }) => `Not reached: ${inUnits(named(what, words), units)}`),
];

/** What lines and marks mean, in lines that fit the width of a mat. */
const KEY = [
  'Dotted: wet, before any pin. Dashed: wanted. Solid: pinned.',
  'Dot: straight pin. T: T-pin. Bar: comb. Line: wire. Numbers are the order.',
];

interface Drawn {
  readonly svg: string;
  readonly height: number;
}

const pieceDrawn = (plan: PiecePlan, units: Units, words: Words): Drawn => {
  const { laidOn: mat } = plan;
  const xs = plan.outlines.wanted;
  const middle = {
    x: xs.reduce((sum, p) => sum + p.x, 0) / xs.length,
    y: xs.reduce((sum, p) => sum + p.y, 0) / xs.length,
  };
  const lines = [...KEY, ...texts(plan, units, words)];
  const below = mat.heightMm + LINE;
  const svg = [
    `<text y="-12" font-size="24" font-weight="bold">${escaped(plan.name)}</text>`,
    matLines(mat),
    field(plan),
    polygon(plan.outlines.rest, 'stroke="#77736a" stroke-width="1.5" stroke-dasharray="2 5"'),
    polygon(plan.outlines.wanted, 'stroke="#111111" stroke-width="1.5" stroke-dasharray="9 5"'),
    polygon(plan.outlines.pinned, 'stroke="#111111" stroke-width="2"'),
    ...plan.pins.map((each) => pin(each, middle, words)),
    legend(0, below, scaleEnd(plan.stretchUse.overWet)),
    ...lines.map(
      (line, k) =>
        `<text x="0" y="${at(below + 58 + LINE * k)}" font-size="${TEXT}">${escaped(line)}</text>`,
    ),
  ].join('\n');
  return { svg, height: below + 58 + LINE * lines.length };
};

/** All pieces on their mats, one below the other, to scale: a unit of the picture is a millimetre. */
export const blockSvg = (
  record: GarmentRecord,
  plan: BlockPlan,
  { units, words }: { readonly units: Units; readonly words: Words },
): string => {
  const title = escaped(goingOut(record).name);
  let y = MARGIN + 60;
  const parts = plan.pieces.map((piece) => {
    const { svg, height } = pieceDrawn(piece, units, words);
    const group = `<g transform="translate(${MARGIN} ${at(y)})">\n${svg}\n</g>`;
    y += height + 2 * MARGIN;
    return group;
  });
  const width = Math.max(960, ...plan.pieces.map(({ laidOn }) => laidOn.widthMm)) + 2 * MARGIN;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${at(width)} ${at(y)}" font-family="sans-serif" fill="#111111">`,
    `<title>${title}</title>`,
    `<rect width="${at(width)}" height="${at(y)}" fill="#ffffff"/>`,
    `<text x="${MARGIN}" y="${MARGIN}" font-size="28" font-weight="bold">${title}</text>`,
    ...parts,
    '</svg>',
    '',
  ].join('\n');
};
