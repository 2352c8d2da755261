import { type Fault, fail, ok, type Result } from '../units/index.ts';
import { fault, finite, LARGEST, outlineFaults } from './outline-faults.ts';
import { nearestOn } from './plane.ts';
import type { BlockQuestion, PieceToBlock, Stock } from './types.ts';
import { wantedOf } from './wanted-outline.ts';

/** A pin asked for may lie this far off the edge, mm: what a finger on a screen misses it by. */
export const PIN_OFF = 10;

const countFaults = (piece: PieceToBlock, field: string): Fault[] => {
  const { outline, edges, wanted } = piece;
  const faults: Fault[] = [];
  if (edges.length !== outline.length)
    faults.push(
      fault(
        'edges',
        `${field}.edges`,
        edges.length,
        'There is not one kind for each edge',
        `Give ${outline.length}.`,
      ),
    );
  if (wanted !== null && wanted.length !== outline.length)
    faults.push(
      fault(
        'wanted',
        `${field}.wanted`,
        wanted.length,
        'The wanted outline has another number of points',
        `Give ${outline.length}.`,
      ),
    );
  return faults;
};

const dimensionFaults = (piece: PieceToBlock, field: string): Fault[] =>
  piece.dimensions.flatMap((each, k) => {
    const at = `${field}.dimensions[${k}]`;
    const faults: Fault[] = [];
    if (!(each.targetMm > 0 && each.targetMm <= LARGEST))
      faults.push(
        fault(
          'target',
          `${at}.targetMm`,
          each.targetMm,
          'This is no length to reach',
          'Give a length above 0 mm.',
        ),
      );
    if (each.toleranceMm !== undefined && !(each.toleranceMm > 0 && each.toleranceMm < LARGEST))
      faults.push(
        fault(
          'tolerance',
          `${at}.toleranceMm`,
          each.toleranceMm,
          'This is no tolerance',
          'Give mm above 0, or none.',
        ),
      );
    const ends = [each.from, each.to].map((end) =>
      typeof end === 'number' ? piece.outline[end] : end,
    );
    if (!ends.every((end) => end !== undefined && finite(end)))
      faults.push(
        fault(
          'ends',
          at,
          JSON.stringify([each.from, each.to]),
          'An end of it is no place on the piece',
          'Give places in mm or indices of the outline.',
        ),
      );
    else if (Math.hypot(ends[0]!.x - ends[1]!.x, ends[0]!.y - ends[1]!.y) < 1e-6)
      faults.push(
        fault(
          'ends',
          at,
          JSON.stringify([each.from, each.to]),
          'Both ends are at one place',
          'Give two places.',
        ),
      );
    return faults;
  });

const pinFaults = (piece: PieceToBlock, field: string): Fault[] =>
  (piece.pinned ?? []).flatMap(({ at, to }, k) => {
    const name = `${field}.pinned[${k}]`;
    if (!finite(at) || !finite(to))
      return [
        fault(
          'pin',
          name,
          JSON.stringify({ at, to }),
          'This is no place in millimetres',
          'Give both coordinates in mm.',
        ),
      ];
    const { off } = nearestOn(piece.outline, at);
    return off <= PIN_OFF
      ? []
      : [
          fault(
            'pin-off-edge',
            `${name}.at`,
            `${at.x}, ${at.y}`,
            `The pin is not on an edge of the piece: the nearest is {mm:${off.toFixed(1)}} away`,
            'Put it on an edge.',
          ),
        ];
  });

const zoneFaults = (piece: PieceToBlock, field: string): Fault[] =>
  piece.zones.flatMap(({ polygon }, k) =>
    polygon.length >= 3 && polygon.every(finite)
      ? []
      : [
          fault(
            'zone',
            `${field}.zones[${k}]`,
            polygon.length,
            'A zone needs at least 3 corners',
            'Give its corners in mm.',
          ),
        ],
  );

const fabricFaults = ({ fabric, restLogSd, after }: PieceToBlock, field: string): Fault[] => {
  const numbers = [fabric.pitch.stitch, fabric.pitch.row].every((p) => p > 0 && p <= LARGEST);
  const doubts = [restLogSd.width, restLogSd.length, after.kept.sd];
  const shares = after.kept.mean >= 0 && after.kept.mean <= 1;
  return numbers && shares && doubts.every((sd) => sd >= 0 && sd <= 1)
    ? []
    : [
        fault(
          'fabric',
          `${field}.fabric`,
          JSON.stringify({ pitch: fabric.pitch, restLogSd, kept: after.kept }),
          'The fabric has a number out of range',
          'Give a stitch and a row above 0 mm, and doubts between 0 and 1.',
        ),
      ];
};

export const pieceFaults = (piece: PieceToBlock, field: string): Fault[] => {
  const outline = [
    ...outlineFaults(piece.outline, `${field}.outline`),
    ...countFaults(piece, field),
  ];
  if (outline.length > 0) return outline;
  const rest = [
    ...dimensionFaults(piece, field),
    ...zoneFaults(piece, field),
    ...pinFaults(piece, field),
    ...fabricFaults(piece, field),
  ];
  return rest.length > 0 ? rest : outlineFaults(wantedOf(piece), `${field}.wanted`);
};

const whole = (value: number): boolean => Number.isInteger(value) && value >= 0 && value <= 10_000;

const stockFaults = (stock: Stock): Fault[] => {
  const counts = [
    ['straight', stock.straight],
    ['tPins', stock.tPins],
    ...(['combs', 'wires'] as const).flatMap((kind) =>
      stock[kind].map(({ count }, k) => [`${kind}[${k}].count`, count] as const),
    ),
  ] as const;
  const lengths = (['combs', 'wires'] as const).flatMap((kind) =>
    stock[kind].map(({ lengthMm }, k) => [`${kind}[${k}].lengthMm`, lengthMm] as const),
  );
  return [
    ...counts.flatMap(([name, count]) =>
      whole(count)
        ? []
        : [
            fault(
              'stock',
              `stock.${name}`,
              count,
              'This is no number of pins',
              'Give a whole number from 0.',
            ),
          ],
    ),
    ...lengths.flatMap(([name, length]) =>
      length > 0 && length <= LARGEST
        ? []
        : [
            fault(
              'stock',
              `stock.${name}`,
              length,
              'This is no length',
              'Give a length above 0 mm.',
            ),
          ],
    ),
  ];
};

const boardFaults = ({
  mat,
  maxStretch,
  mostPullN,
  scallopToleranceMm,
}: BlockQuestion): Fault[] => {
  const faults: Fault[] = [];
  if (!(mat.widthMm > 0 && mat.heightMm > 0 && mat.widthMm <= LARGEST && mat.heightMm <= LARGEST))
    faults.push(
      fault(
        'mat',
        'mat',
        `${mat.widthMm} × ${mat.heightMm}`,
        'The mat has no size',
        'Give its width and height in mm.',
      ),
    );
  if (!(mat.tileMm >= 0 && Number.isFinite(mat.tileMm)))
    faults.push(
      fault(
        'mat',
        'mat.tileMm',
        mat.tileMm,
        'This is no side of a tile',
        'Give it in mm, or 0 for none.',
      ),
    );
  if (maxStretch !== undefined && !(maxStretch > 0 && Number.isFinite(maxStretch)))
    faults.push(
      fault(
        'stretch',
        'maxStretch',
        maxStretch,
        'This is no stretch',
        'Give a share above 0: 0.05 is 5 %.',
      ),
    );
  if (mostPullN !== undefined && !(mostPullN > 0 && Number.isFinite(mostPullN)))
    faults.push(
      fault(
        'pull',
        'mostPullN',
        mostPullN,
        'This is no pull of a pin',
        'Give N above 0: a hand gives about 5.',
      ),
    );
  if (
    scallopToleranceMm !== undefined &&
    !(scallopToleranceMm > 0 && Number.isFinite(scallopToleranceMm))
  )
    faults.push(
      fault(
        'scallop',
        'scallopToleranceMm',
        scallopToleranceMm,
        'This is no tolerance',
        'Give mm above 0.',
      ),
    );
  return faults;
};

/** Everything that keeps a question from being answered. */
export const checked = (question: BlockQuestion): Result<BlockQuestion> => {
  const { pieces, stock } = question;
  const faults = [
    ...(pieces.length > 0
      ? []
      : [fault('no-piece', 'pieces', 0, 'There is no piece to block', 'Give at least one piece.')]),
    ...pieces.flatMap((piece, k) => pieceFaults(piece, `pieces[${k}]`)),
    ...stockFaults(stock),
    ...boardFaults(question),
  ];
  return faults.length === 0 ? ok(question) : fail(...faults);
};
