import { ownValue } from '@dryflat/engine/units';
import type { Wearer } from '../schema/index.ts';

type Range = readonly [lowMm: number, highMm: number];
type Ranges = Readonly<Record<string, Range>>;

/**
 * Girths outside of which a body of the group is not to be expected, in millimetres around. Bounds
 * of sanity, from memory, set wide on purpose: they only ever raise a question.
 */
const ADULT: Ranges = {
  chest: [700, 1650],
  waist: [520, 1600],
  hip: [740, 1750],
  'upper-arm': [190, 560],
  wrist: [120, 250],
  head: [500, 660],
  foot: [180, 310],
  ankle: [170, 340],
  hand: [150, 280],
};
const CHILD: Ranges = {
  chest: [480, 1000],
  waist: [430, 950],
  hip: [480, 1050],
  'upper-arm': [130, 360],
  wrist: [95, 190],
  head: [460, 590],
  foot: [120, 250],
  ankle: [130, 270],
  hand: [110, 220],
};
const BABY: Ranges = {
  chest: [300, 580],
  waist: [300, 580],
  hip: [300, 620],
  'upper-arm': [90, 230],
  wrist: [70, 150],
  head: [300, 510],
  foot: [80, 160],
  ankle: [80, 180],
  hand: [70, 150],
};

const BY_GROUP: Readonly<Record<Wearer['group'], Ranges>> = {
  woman: ADULT,
  man: ADULT,
  child: CHILD,
  baby: BABY,
  nobody: {},
  'not-said': {},
};

/** Girths that a body of the group may have, or null where nothing is known of it. */
export const bodyRange = (group: Wearer['group'], body: string): Range | null =>
  ownValue(BY_GROUP[group], body) ?? null;
