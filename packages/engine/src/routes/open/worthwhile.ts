import { garmentTapeSd } from '../../fabric/index.ts';
import { judge } from '../knit/judge.ts';
import type { RouteKind } from '../types.ts';
import type { Bench, Draft, Opened } from './draft.ts';

/** Ways to be done with it: they are open whatever they change, and so is the plan. */
const ENDS: ReadonlySet<RouteKind> = new Set(['lay', 'give', 'leave']);
/** What is done for the sake of a length or a width. */
const MENDS: ReadonlySet<RouteKind> = new Set(['rip-length', 'rip-width', 'add', 'take-away']);

/** A chance that moves by no more is printed alike: one percentage point. */
const CHANCE = 0.01;

const STATES = ['dried', 'worn', 'rewashed'] as const;

/** The most that a median moves from what is planned, over what a tape on the garment errs by (an SD). */
const overTape = ({ luck: own, planned }: Bench, { luck, makes }: Draft): number =>
  Math.max(
    0,
    ...(makes ?? []).flatMap((make, at) => {
      const layers = luck.known.model.measurements[at]!.wanted.span === 'around' ? 2 : 1;
      return STATES.map((state) => {
        const was = own.range(at, planned[at]!, state).p50Mm;
        const by = Math.abs(luck.range(at, make, state).p50Mm / was - 1);
        return by / garmentTapeSd(was / layers);
      });
    }),
  );

const movesChance = ({ forecast, plannedFit }: Bench, { luck, makes, judged }: Draft): boolean => {
  const { fit, chanceAll } = judge(luck, makes ?? [], judged, forecast.judgeAt);
  const moves = (a: number | null, b: number | null) => Math.abs((a ?? 0) - (b ?? 0)) > CHANCE;
  return (
    moves(chanceAll, plannedFit.chanceAll) ||
    fit.some(({ chance }, k) => moves(chance, plannedFit.fit[k]!.chance))
  );
};

/** A mend under what the tape reads is none; nor is what moves no length by half of that and no chance. */
const changesNothing = (bench: Bench, draft: Draft): boolean => {
  if (draft.planned || ENDS.has(draft.kind) || bench.own.targets.length === 0) return false;
  const moved = overTape(bench, draft);
  return moved < 1 && (MENDS.has(draft.kind) || (moved < 0.5 && !movesChance(bench, draft)));
};

/** The routes that change something; the others are not open. */
export const worthwhile = (bench: Bench, { drafts, leftOut }: Opened): Opened => {
  const idle = drafts.filter((draft) => changesNothing(bench, draft));
  return {
    drafts: drafts.filter((draft) => !idle.includes(draft)),
    leftOut: [
      ...leftOut,
      ...idle.map(({ kind, name }) => ({
        kind,
        name,
        why: 'It changes nothing that a tape would tell from the plan.',
      })),
    ],
  };
};
