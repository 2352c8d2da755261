import { mm, ok, type Result } from '../../units/index.ts';
import { type CountAnswer, countFor } from './count-for.ts';
import type { PieceShape } from './piece-shape.ts';
import type { Pitch, Repeat } from './types.ts';

export interface BaseCounts {
  /** Stitches cast on. */
  readonly castOn: CountAnswer;
  /** Stitches above the ribbing, on the repeat of the stitch pattern. */
  readonly main: CountAnswer;
  /** Places of a round that are shaped at once; 1 where it is worked flat. */
  readonly places: number;
}

/** A crown or a tip is shaped in as many places: common practice, no source. */
const CROWN = 8;
const TIP = 4;

/** A point is begun with three stitches: common practice, no source. */
const FEWEST = 3;

const leastCommon = (a: number, b: number): number => {
  const common = (x: number, y: number): number => (y === 0 ? x : common(y, x % y));
  return (a * b) / common(a, b);
};

/** In a round the count has to part into equal sections; an edge stitch for seams has no place there. */
const repeatFor = (
  form: PieceShape['form'],
  places: number,
  repeat: Repeat | undefined,
): Pick<Repeat, 'stitches' | 'plus'> | undefined => {
  if (form !== 'round') return repeat;
  const stitches = repeat?.stitches ?? 1;
  return { stitches: stitches > 2 * CROWN ? places : leastCommon(stitches, places), plus: 0 };
};

const widthAt = (shape: PieceShape, height: number, pitch: Pitch): number => {
  const across = shape.outer(height) * pitch.stitch;
  return shape.form === 'half' ? across : 2 * across;
};

/** Nearest counts for the cast-on edge and for the width above the ribbing. */
export const baseCounts = (
  shape: PieceShape,
  pitch: Pitch,
  repeat: Repeat | undefined,
  isHat: boolean,
): Result<BaseCounts> => {
  const places = shape.form === 'round' ? (isHat ? CROWN : TIP) : 1;
  const grid = repeatFor(shape.form, places, repeat);
  const ask = (wanted: number, on: typeof grid, parity: 'any' | 'even' | 'odd' = 'any') =>
    countFor({
      wantedMm: Math.max(wanted, pitch.stitch / 100),
      pitchMm: pitch.stitch,
      repeat: on,
      parity,
      atLeast: places > 1 ? places : FEWEST,
    });
  const above = widthAt(shape, shape.ribs + 0.5, pitch);
  const main = ask(above, grid);
  if (!main.ok) return main;
  const hem = widthAt(shape, 0.5, pitch);
  if (shape.ribs === 0 || Math.abs(hem - above) < pitch.stitch)
    return ok({ castOn: { ...main.value, ...offFrom(main.value, hem) }, main: main.value, places });
  const castOn = ask(hem, shape.form === 'round' ? { stitches: places, plus: 0 } : undefined);
  return castOn.ok ? ok({ castOn: castOn.value, main: main.value, places }) : castOn;
};

const offFrom = (counted: CountAnswer, wanted: number) => ({
  wantedMm: mm(wanted),
  errorMm: counted.mm - wanted,
});
