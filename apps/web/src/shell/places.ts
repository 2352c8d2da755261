import { type ComponentType, lazy } from 'react';
import type { IconName } from '../kit/index.ts';
import type { PlaceName } from './place-names.ts';

export interface Place {
  readonly label: string;
  readonly icon: IconName;
  readonly Screen: ComponentType;
}

const place = (
  label: string,
  icon: IconName,
  load: () => Promise<{ default: ComponentType }>,
): Place => ({ label, icon, Screen: lazy(load) });

/** What each place is called and where its screen lives; a screen is loaded when first opened. */
export const PLACES: Readonly<Record<PlaceName, Place>> = {
  forecast: place('Forecast', 'forecast', () => import('../screens/forecast/index.tsx')),
  wearer: place('Wearer', 'wearer', () => import('../screens/wearer/index.tsx')),
  pattern: place('Pattern', 'pattern', () => import('../screens/pattern/index.tsx')),
  yarn: place('Yarn', 'yarn', () => import('../screens/yarn/index.tsx')),
  evidence: place('Evidence', 'evidence', () => import('../screens/evidence/index.tsx')),
  routes: place('Routes', 'routes', () => import('../screens/routes/index.tsx')),
  counts: place('Counts', 'counts', () => import('../screens/counts/index.tsx')),
  pieces: place('Pieces', 'pieces', () => import('../screens/pieces/index.tsx')),
  pace: place('Pace', 'pace', () => import('../screens/pace/index.tsx')),
  mat: place('Mat', 'mat', () => import('../screens/mat/index.tsx')),
  pinning: place('Pinning', 'mat', () => import('../screens/pinning/index.tsx')),
  dry: place('Dry', 'dry', () => import('../screens/dry/index.tsx')),
  after: place('After', 'after', () => import('../screens/after/index.tsx')),
  paper: place('Paper', 'paper', () => import('../screens/paper/index.tsx')),
  report: place('Report', 'report', () => import('../screens/report/index.tsx')),
};
