import type { HeldThing } from './held-on-mat.ts';
import type { ReplanChange, Replanned, ReplanQuestion } from './mat-types.ts';
import type { PinState } from './pin-state.ts';
import type { MatSpec, PiecePlan, PinKind, PinPlaced } from './types.ts';

/** What a tape in hand tells apart, mm: half a centimetre is its next mark that an eye finds. */
const MARK = 5;

const mm = (value: number): string => `{mm:${value.toFixed(1)}}`;

const WORDS: Readonly<Record<PinKind, readonly [one: string, many: string]>> = {
  straight: ['pin', 'pins'],
  't-pin': ['pin', 'pins'],
  comb: ['comb', 'combs'],
  wire: ['wire', 'wires'],
};

const counts = (pins: readonly PinPlaced[]): Record<'pin' | 'comb' | 'wire', number> => {
  const of = (...kinds: PinKind[]) => pins.filter(({ kind }) => kinds.includes(kind)).length;
  return { pin: of('straight', 't-pin'), comb: of('comb'), wire: of('wire') };
};

const pinChanges = (pins: readonly PinPlaced[], before: readonly PinPlaced[]): ReplanChange[] => {
  const [now, was] = [counts(pins), counts(before)];
  return (['pin', 'comb', 'wire'] as const).flatMap((kind): ReplanChange[] => {
    const more = now[kind] - was[kind];
    if (more === 0) return [];
    const words = WORDS[kind === 'pin' ? 'straight' : kind];
    const count = Math.abs(more);
    return [
      {
        what: 'pins',
        text: `${count} ${count === 1 ? words[0] : words[1]} ${more > 0 ? 'more' : 'fewer'} to come: ${now[kind]} instead of ${was[kind]}.`,
      },
    ];
  });
};

type Before = NonNullable<ReplanQuestion['before']>;

const reachChanges = (
  measurements: PiecePlan['measurements'],
  before: Before['measurements'],
): ReplanChange[] =>
  measurements.flatMap(({ landmark, name, reachedMm: { p50Mm } }): ReplanChange[] => {
    const was = before.find((each) => each.landmark === landmark)?.reachedMm.p50Mm;
    return was === undefined || Math.abs(p50Mm - was) < MARK
      ? []
      : [{ what: 'reach', text: `${name}: ${mm(p50Mm)} instead of ${mm(was)}.` }];
  });

/** Steps that hold the same of the edge, with other places on the mat. */
const tapeChanges = (pins: readonly PinPlaced[], before: readonly PinPlaced[]): ReplanChange[] => {
  const was = new Map(before.map((step) => [`${step.on.from} ${step.on.to}`, step]));
  const moved = pins.flatMap((pin) => {
    const old = was.get(`${pin.on.from} ${pin.on.to}`);
    const by = old === undefined ? 0 : Math.hypot(pin.xMm - old.xMm, pin.yMm - old.yMm);
    return by >= MARK ? [by] : [];
  });
  if (moved.length === 0) return [];
  const most = mm(Math.max(...moved));
  return [
    {
      what: 'tape',
      text:
        moved.length === 1
          ? `One step goes elsewhere, by ${most}.`
          : `${moved.length} steps go elsewhere, by up to ${most}.`,
    },
  ];
};

/** What has changed beside the plan as it stood; nothing where that is not known. */
export const replanChanges = (plan: PiecePlan, before: ReplanQuestion['before']): ReplanChange[] =>
  before === undefined
    ? []
    : [
        ...pinChanges(plan.pins, before.pins),
        ...reachChanges(plan.measurements, before.measurements),
        ...tapeChanges(plan.pins, before.pins),
      ];

interface Standing {
  readonly given: readonly HeldThing[];
  readonly orders: readonly number[];
  readonly mat: MatSpec;
}

/** Things in the mat that the fabric is not thought to reach. */
const beyond = (state: PinState, { given, orders }: Standing): number[] =>
  given.flatMap(({ nodes }, k) => (nodes.some((n) => state.shortfalls.has(n)) ? [orders[k]!] : []));

/** What is to be known of the rest of the plan. */
export const replanNotices = (
  state: PinState,
  plan: PiecePlan,
  standing: Standing,
): Replanned['notices'] => {
  const far = beyond(state, standing);
  return [
    ...(plan.moreStock.length === 0
      ? []
      : [
          {
            code: 'stock-short',
            text: `What is left does not hold all of it. ${plan.couldNot.map(({ what }) => `${what}.`).join(' ')}`.trim(),
          },
        ]),
    ...(far.length > 0
      ? [
          {
            code: 'beyond-reach',
            text: `${far.length === 1 ? 'Step' : 'Steps'} ${far.join(', ')}: the fabric is not thought to reach as far as it does there. Tell how it felt.`,
          },
        ]
      : []),
    ...(plan.fitsMat
      ? []
      : [
          {
            code: 'mat-too-small',
            text: `It goes over the edge of the mat of {mm:${standing.mat.widthMm}} by {mm:${standing.mat.heightMm}}.`,
          },
        ]),
    ...(plan.converged
      ? []
      : [
          {
            code: 'not-settled',
            text: 'The calculation did not come to rest. Take its numbers as a guess.',
          },
        ]),
  ];
};
