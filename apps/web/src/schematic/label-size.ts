import type { DimensionNumbers, LabelSize } from '@dryflat/paper/schematic';

/** What a label shows, top to bottom: a short name, the big number, and the wanted number. */
export interface LabelText {
  readonly name: string;
  readonly big: string;
  /** Null where the big number is the wanted one already. */
  readonly wanted: string | null;
}

export const labelText = (
  name: string,
  numbers: DimensionNumbers,
  print: (mm: number) => string,
): LabelText => {
  const { wanted, p50 } = numbers;
  const big = p50 ?? wanted ?? 0;
  return { name, big: print(big), wanted: p50 === null || wanted === null ? null : print(wanted) };
};

/** Sizes of type in rem; schematic.css sets the same. */
export const TYPE = { small: 0.8125, big: 1.25, bigAtDesk: 1.625 } as const;
/** Widest average advance of the app's faces per em, digits and lower case, with some room. */
const ADVANCE = { small: 0.54, big: 0.57 };
const LINE = 1.2;
const PADDING = 6;
/** A finger needs 44 px each way. */
export const TOUCH = 44;

/** Size in px of a label's box, at a root font size of `rem` px; never below a finger's size. */
export const labelSize = (text: LabelText, rem: number, desk: boolean): LabelSize => {
  const [small, big] = [TYPE.small * rem, (desk ? TYPE.bigAtDesk : TYPE.big) * rem];
  const widths = [
    text.name.length * small * ADVANCE.small,
    text.big.length * big * ADVANCE.big,
    text.wanted === null ? 0 : text.wanted.length * small * ADVANCE.small + 1.25 * rem,
  ];
  const lines = small + big + (text.wanted === null ? 0 : small);
  return {
    width: Math.max(TOUCH, Math.ceil(Math.max(...widths) + 2 * PADDING)),
    height: Math.max(TOUCH, Math.ceil(lines * LINE + 4)),
  };
};

/** Room for one letter on the drawing. */
export const letterSize = (rem: number): LabelSize => ({ width: 1.5 * rem, height: 1.5 * rem });

/** A, B, … Z, then A2, B2 and so on. */
export const letterOf = (index: number): string =>
  String.fromCharCode(65 + (index % 26)) + (index < 26 ? '' : `${Math.floor(index / 26) + 1}`);
