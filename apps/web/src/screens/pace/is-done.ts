import type { PaceForecast } from '@dryflat/engine/routes';

/** No step takes time any more. */
export const isDone = ({ milestones }: PaceForecast): boolean =>
  milestones.every(({ id }) => id === 'done');
