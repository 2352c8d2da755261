import { type Basis, SAFE_STRETCH } from '../../fabric/index.ts';
import type { Draft } from '../open/draft.ts';
import type { RoutesQuestion } from '../types.ts';
import { DRYING } from './cost.ts';
import type { Work } from './work.ts';

const practice = (id: string, text: string): Basis => ({
  id,
  kind: 'common-practice',
  text,
  source: null,
});
const assumed = (id: string, text: string): Basis => ({
  id,
  kind: 'assumption',
  text,
  source: null,
});

/** Bases of routes beside those of the garment, its yarn and its pace. */
export const ROUTE_BASES: readonly Basis[] = [
  practice(
    'route-needle-step',
    'One needle size moves the gauge by about half a stitch to one in 20, half of that as doubt',
  ),
  practice(
    'route-mat',
    'Washing, pressing and laying out takes 20 to 50 minutes, pinning 50 minutes to 3 hours',
  ),
  practice('route-drying', `From towels to dry ${DRYING.p5} to ${DRYING.p95} hours`),
  assumed('route-give-half', 'A garment that goes to somebody else is worth half'),
  {
    id: 'route-body-tables',
    kind: 'from-memory',
    text: 'Published sizes of bodies are a start, not a body: up to {mm:13} off and more',
    source: 'cyc-body-sizes',
  },
  {
    id: 'route-safe',
    kind: 'published',
    text: `Makers of wool advise no stretch over ${100 * SAFE_STRETCH.steaming.low} % of garments; lace is pinned harder, what stands up less, and what is weak when wet less still (common practice and memory)`,
    source: 'wool-training-notes',
  },
];

const isWork = ({ knit, rip }: Work): boolean => knit.length > 0 || rip.length > 0;

/** Ids of what a route stands on: measured first, then what is assumed of it alone. */
export const dependsOn = (draft: Draft, question: RoutesQuestion): string[] => {
  const { bases } = draft.luck.known;
  const measured = bases.filter(({ kind }) => kind === 'measured');
  const rest = bases.filter(({ kind }) => kind !== 'measured');
  const { work } = draft;
  return [
    ...(draft.makes === null ? [] : measured.map(({ id }) => id)),
    ...(question.pace.log.length > 0 && isWork(work) ? ['pace-timed'] : []),
    ...(draft.makes === null ? [] : rest.map(({ id }) => id)),
    ...(question.pace.log.length === 0 && isWork(work) ? ['pace-prior'] : []),
    ...(work.rip.length > 0 ? ['pace-ripped', 'yarn-ripped'] : []),
    ...(work.mat === 'none' ? [] : ['route-mat']),
    ...(work.mat === 'none' || question.dryingHours !== null ? [] : ['route-drying']),
    ...(draft.kind === 'gentle' ? ['route-safe'] : []),
    ...(draft.bases ?? []),
  ].filter((id, k, all) => all.indexOf(id) === k);
};
