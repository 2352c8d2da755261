import { type Cited, citationOf, type ReferenceKey } from '../textile/index.ts';
import type { DryingBasis, DryingQuestion } from './types.ts';

const work = (what: string, source: ReferenceKey, standing: Cited['standing']): DryingBasis => ({
  what,
  source: citationOf(source),
  standing,
});
const assumed = (what: string): DryingBasis => ({ what, source: null, standing: 'assumption' });

const ALWAYS: readonly DryingBasis[] = [
  work('Vapour pressure and wet bulb of the air', 'allen-1998', 'read-second-hand'),
  work('A wet face loses the same whatever its fibre or texture', 'fourt-1951', 'read'),
  work('A constant rate, then one that falls with the water left', 'steele-1958', 'read'),
  work('What a yarn holds over humidity', 'guggenheim-1966', 'from-memory'),
  work('What a fibre holds in saturated air', 'morton-hearle-2008', 'from-memory'),
  assumed('Heat that reaches the cloth in still or moving air, and through a mat'),
  assumed('How far the falling rate keeps up: between two published laws'),
];

/** What the forecast stands on, with the guesses that this question leaves. */
export const basesOf = (question: DryingQuestion): readonly DryingBasis[] => [
  ...ALWAYS,
  ...(question.lying.fabricM2 === null ? [assumed('Area of the fabric, from its mass')] : []),
  ...(question.lying.thick === null ? [assumed('Thick places, the usual ones')] : []),
  ...(typeof question.wet === 'number' ? [] : [assumed('Water left after pressing')]),
];
