import type { ClockMark, Spread } from './types.ts';

export interface MarksAsked {
  /** Hours until a third and a half of the water is gone. */
  readonly thirdGone: Spread;
  readonly halfGone: Spread;
  readonly dryHours: Spread;
  readonly pinned: boolean;
  /** Hours of the last weighing; 0 before any. */
  readonly now: number;
  readonly isDry: boolean;
}

const FIRST = 'Weigh it, and press a thick place: the rate is known from now on.';
const TURN = 'Turn it over, and lay it on a dry towel or a dry part of the mat.';
const MAY = 'It may be dry from now on. Weigh it, or feel the thick places.';
const DRY = 'As likely dry as not. Weigh it against its dry mass, and feel the thick places.';

const KINDS = {
  'first-look': 'look',
  turn: 'turn',
  'may-be-dry': 'look',
  'look-again': 'look',
  dry: 'dry',
} as const;

const mark = (id: ClockMark['id'], within: Spread, hours: number, text: string): ClockMark => ({
  kind: KINDS[id],
  id,
  hours,
  within,
  text,
});

/** Half an hour is the least that a kitchen scale can tell apart. */
const SOON = 0.5;

/** Halfway to the expected end, where everything that was planned has passed. */
const lookAgain = ({ now, dryHours }: MarksAsked): ClockMark =>
  mark('look-again', dryHours, now + Math.max(SOON, (dryHours.p50 - now) / 2), MAY);

/**
 * When to look, turn and look again, in order of time, after `now`. Turning once at half is common
 * practice, no source; a pinned piece is not turned, and the first look is for a garment that was not
 * weighed since. A garment that is dry has no marks.
 */
export const clockMarks = (asked: MarksAsked): readonly ClockMark[] => {
  const { thirdGone, halfGone, dryHours, pinned, now, isDry } = asked;
  if (isDry) return [];
  const planned: readonly ClockMark[] = [
    mark('first-look', thirdGone, thirdGone.p50, FIRST),
    mark('turn', halfGone, halfGone.p50, TURN),
    mark('may-be-dry', dryHours, dryHours.p5, MAY),
    mark('dry', dryHours, dryHours.p50, DRY),
  ];
  const idle = (id: ClockMark['id']) =>
    (id === 'turn' && pinned) || (id === 'first-look' && now > 0);
  const ahead = planned.filter(({ id, hours }) => hours > now && !idle(id));
  const looks = ahead.some(({ kind }) => kind === 'look');
  return (looks ? ahead : [lookAgain(asked), ...ahead]).sort((a, b) => a.hours - b.hours);
};
