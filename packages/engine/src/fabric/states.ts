/**
 * The states of a fabric. Every length and every count belongs to one; lengths of different states
 * are never compared or converted without the change between them.
 */
export const STATES = ['asKnit', 'wet', 'pinned', 'dried', 'worn', 'rewashed'] as const;
export type FabricState = (typeof STATES)[number];

/** States that a forecast is given for: `pinned` is a choice of the knitter, not a forecast. */
export const FORECAST_STATES = ['asKnit', 'wet', 'dried', 'worn', 'rewashed'] as const;
export type ForecastState = (typeof FORECAST_STATES)[number];
