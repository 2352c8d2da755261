import type { DryingForecast } from '@dryflat/engine/drying';

const HOUR = 3_600_000;

export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** Hours that the picture spans: to the late end of the range, or to now where that is later. */
export const hourEnds = (forecast: DryingForecast, nowHours: number): Ends => {
  const last = Math.max(
    forecast.dryHours.p95,
    ...forecast.marks.map(({ hours }) => hours),
    forecast.now?.hours ?? 0,
  );
  // Long after it is dry the picture does not shrink to nothing.
  return { low: 0, high: Math.max(1, last, Math.min(nowHours, 1.5 * last)) * 1.04 };
};

/** Grams that the picture spans, with a little room below what is dry. */
export const massEnds = (forecast: DryingForecast, weighed: readonly number[]): Ends => {
  const all = [
    ...weighed,
    forecast.dryMassG.p5,
    ...forecast.course.flatMap(({ massG }) => [massG.p5, massG.p95]),
  ];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const room = Math.max(1, (high - low) * 0.08);
  return { low: low - room, high: high + room };
};

export const scale =
  ({ low, high }: Ends, from: number, to: number) =>
  (value: number): number =>
    from + ((value - low) / (high - low)) * (to - from);

/** Hours between marks of the clock, so that there are few enough to read. */
export const tickStep = (hours: number, most: number): number =>
  [1, 2, 3, 6, 12, 24, 48].find((step) => hours / step <= most) ?? 96;

export interface Tick {
  readonly ms: number;
  /** It is midnight: a day begins. */
  readonly day: boolean;
}

/** Moments at whole hours of the clock on the wall, every `step` of them; days of any length. */
export const clockTicks = (fromMs: number, toMs: number, step: number): Tick[] => {
  const ticks: Tick[] = [];
  for (let ms = Math.ceil(fromMs / (HOUR / 2)) * (HOUR / 2); ms <= toMs; ms += HOUR / 2) {
    const at = new Date(ms);
    const hour = at.getHours();
    const whole = at.getMinutes() === 0;
    const due = step < 24 ? hour % step === 0 : hour === 0;
    const again = ticks.at(-1) !== undefined && new Date(ticks.at(-1)!.ms).getHours() === hour;
    if (whole && due && !(again && ms - ticks.at(-1)!.ms < 2 * HOUR))
      ticks.push({ ms, day: hour === 0 });
  }
  return ticks;
};

/** Places along a line, moved apart so that none is nearer than `least` to the next, kept below `end` where there is room. */
export const apart = (places: readonly number[], least: number, end: number): number[] => {
  const moved: number[] = [];
  places.forEach((place, k) => {
    moved.push(k === 0 ? place : Math.max(place, moved[k - 1]! + least));
  });
  for (let k = moved.length - 1; k >= 0; k -= 1)
    moved[k] = Math.min(moved[k]!, end - (moved.length - 1 - k) * least);
  return moved;
};
