import { forecast } from './forecast.ts';
import type {
  Forecast,
  ForecastOptions,
  ForecastQuestion,
  MeasurementForecast,
  Notice,
} from './forecast-types.ts';

/** A garment of which nobody has said the size yet: what each would measure. */
export interface EachSize {
  /** One for each size, in their order. */
  readonly sizes: readonly Forecast[];
  /** The size with the best chance that all fits; null where nothing is wanted, or none is likely to fit. */
  readonly best: string | null;
  /** What is to be known whatever the size. */
  readonly notices: readonly Notice[];
}

/** A chance that would be printed as `under 1 %` makes no size the best. */
const LEAST_CHANCE = 0.01;

/** Forecasts of one question for several sizes, on the same luck. Throws as `forecast` does. */
export const forecastEach = (
  questions: readonly ForecastQuestion[],
  options: ForecastOptions = {},
): EachSize => {
  const sizes = questions.map((question) => forecast(question, options));
  const chance = ({ chanceAllFit }: Forecast): number => chanceAllFit ?? 0;
  const best = sizes.reduce<Forecast | null>(
    (a, b) => (chance(b) > (a === null ? LEAST_CHANCE : chance(a)) ? b : a),
    null,
  );
  const [first, ...others] = sizes;
  const isShared = ({ text }: Notice): boolean =>
    others.every(({ notices }) => notices.some((each) => each.text === text));
  return { sizes, best: best?.chosenSize ?? null, notices: first?.notices.filter(isShared) ?? [] };
};

/** The width and the length that are looked at first: those whose fit is wanted, else the first given. */
export const keyMeasurements = ({ measurements, fit }: Forecast): MeasurementForecast[] => {
  const wanted = new Set(fit.map((each) => each.measurement));
  const order = [...measurements].sort(
    (a, b) => Number(wanted.has(b.id)) - Number(wanted.has(a.id)),
  );
  return (['width', 'length'] as const).flatMap(
    (direction) => order.find((each) => each.direction === direction) ?? [],
  );
};
