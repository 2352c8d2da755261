import { isoDay } from './iso-day.ts';
import type { PaceForecast } from './types.ts';

/** Days of the draws, counted from the first day, sorted once and asked often. */
export class DoneDays {
  readonly #sorted: Float64Array;
  readonly #first: number;

  constructor(days: Float64Array, first: number) {
    this.#sorted = days.slice().sort();
    this.#first = first;
  }

  /** The first ISO day by which that share of the draws is done; null where none within the horizon. */
  at(level: number): string | null {
    const n = this.#sorted.length;
    const day = this.#sorted[Math.max(Math.ceil(level * n) - 1, 0)]!;
    return Number.isFinite(day) ? isoDay(this.#first + day) : null;
  }

  /** Share that is not done within the horizon. */
  get never(): number {
    const finite = this.#sorted.findIndex((day) => !Number.isFinite(day));
    return finite < 0 ? 0 : 1 - finite / this.#sorted.length;
  }

  /** Chance day by day; days without any are left out. */
  get days(): PaceForecast['days'] {
    const n = this.#sorted.length;
    const out: PaceForecast['days'][number][] = [];
    for (let i = 0; i < n && Number.isFinite(this.#sorted[i]!); ) {
      const begin = i;
      const day = this.#sorted[i]!;
      while (i < n && this.#sorted[i] === day) i++;
      out.push({ day: isoDay(this.#first + day), chance: (i - begin) / n, cumulative: i / n });
    }
    return out;
  }
}
