import type { Evidence } from './evidence-on-mat.ts';
import { HAND_PULL } from './hand-pull.ts';
import { isTold } from './learned-words.ts';
import type { Learned, LearnedChange } from './mat-types.ts';
import type { Ruler } from './measure.ts';

type Notice = Learned['notices'][number];

interface Told {
  readonly values: readonly number[];
  readonly slopes: readonly (readonly number[])[];
  readonly taken: readonly boolean[];
  readonly changes: readonly LearnedChange[];
  /** Whether the search for what fits best came to its end. */
  readonly settled: boolean;
}

/** A dimension that moves by less than this share of what the tape may be off tells of nothing but its pins. */
const DUMB = 0.3;

const mm = (value: number): string => `{mm:${value.toFixed(1)}}`;

const notTaken = (
  { what, value, ruler }: Evidence,
  foretold: number,
  rulers: readonly Ruler[],
): Notice => ({
  code: 'not-taken',
  text:
    what === 'length'
      ? `${rulers[ruler]!.dimension.name}: ${mm(value)} by the tape where ${mm(foretold)} was foretold is beyond all doubt there was, so it is not taken. Measure it again; if it stays, the gauge the plan began with is wrong.`
      : `A pull that felt ${what === 'slack' ? 'slack' : 'at its limit'} does not go with the pins that are in, so it is not taken.`,
});

const namesOf = (evidence: readonly Evidence[], rulers: readonly Ruler[]): string[] => [
  ...new Set(evidence.flatMap(({ ruler }) => (ruler < 0 ? [] : [rulers[ruler]!.dimension.name]))),
];

/** What the readings cannot tell and what was not taken of them, in words. */
export const learnedNotices = (
  evidence: readonly Evidence[],
  rulers: readonly Ruler[],
  { values, slopes, taken, changes, settled }: Told,
): Notice[] => {
  const odd = evidence.flatMap((each, i) => (taken[i] ? [] : [notTaken(each, values[i]!, rulers)]));
  const dumb = evidence.filter(
    ({ what, sd }, i) => taken[i] && what === 'length' && Math.hypot(...slopes[i]!) < DUMB * sd,
  );
  const held = namesOf(dumb, rulers);
  const stiffness = changes.find(({ what }) => what === 'stiffness')!;
  const felt = evidence.some(({ what }, i) => what === 'at-limit' && taken[i]);
  return [
    ...odd,
    ...(settled
      ? []
      : [
          {
            code: 'readings-not-settled',
            text: 'What was told did not settle on one answer. Take what the piece told as a guess, and measure once more.',
          },
        ]),
    ...(held.length > 0
      ? [
          {
            code: 'held-at-both-ends',
            text: `${held.join(', ')}: pins hold both ends, so the tape there tells where the pins stand and nothing of the fabric.`,
          },
        ]
      : []),
    ...(isTold(stiffness.before, stiffness.after)
      ? []
      : [
          {
            code: 'stiffness-untold',
            text: 'A tape tells how large the piece lies and how it draws in. How stiff it is only a pull at its limit tells.',
          },
        ]),
    ...(felt
      ? [
          {
            code: 'hand-pull',
            text: `“At its limit” is taken as a pull of about ${HAND_PULL.n} N on one pin, the weight of half a kilogram, by a factor of two either way: an assumption.`,
          },
        ]
      : []),
  ];
};
