import type { GarmentRecord, KeptForecast } from '@dryflat/record';

/** Forecasts that were kept before the garment was first measured, oldest first. */
export const keptBefore = ({ forecasts, outcomes }: GarmentRecord): readonly KeptForecast[] => {
  const days = outcomes.flatMap(({ on, measured }) =>
    on !== undefined && measured.length > 0 ? [on] : [],
  );
  const first = days.sort()[0];
  return forecasts
    .filter(({ on }) => first === undefined || on <= first)
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
};

/** What the last of them that tells of a measurement says of it dried; undefined where none does. */
export const toldBefore = (kept: readonly KeptForecast[], id: string) =>
  kept
    .flatMap(({ measurements }) => measurements)
    .filter(({ measurement, state }) => measurement === id && state === 'dried')
    .at(-1);
