/** Words of the craft that differ; all else is the same on both sides. */
export type Words = 'us' | 'uk';

export interface Vocabulary {
  readonly bindOff: string;
  readonly centre: string;
  readonly other: string;
  readonly gauge: string;
  readonly stockinette: string;
  readonly even: string;
}

export const VOCABULARY: Readonly<Record<Words, Vocabulary>> = {
  us: {
    bindOff: 'bind off',
    centre: 'center',
    other: 'every other',
    gauge: 'gauge',
    stockinette: 'stockinette stitch',
    even: 'even',
  },
  uk: {
    bindOff: 'cast off',
    centre: 'centre',
    other: 'every alternate',
    gauge: 'tension',
    stockinette: 'stocking stitch',
    even: 'straight',
  },
};

/** 1st, 2nd, 3rd, 4th, 11th, 21st. */
export const ordinal = (n: number): string => {
  const tens = n % 100;
  if (tens >= 11 && tens <= 13) return `${n}th`;
  return `${n}${['th', 'st', 'nd', 'rd'][n % 10] ?? 'th'}`;
};

export const counted = (n: number, what: string): string =>
  n === 1 ? `1 ${what}` : what === 'stitch' ? `${n} stitches` : `${n} ${what}s`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
