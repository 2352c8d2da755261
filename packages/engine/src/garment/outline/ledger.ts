import { type Millimetres, mm } from '../../units/index.ts';
import type { Assumed, OutlineNotice, OutlineSizes } from './types.ts';

/** Landmarks that may be nothing at all: a straight back neck, no ribbing. */
const MAY_BE_ZERO = new Set(['front-neck-depth', 'back-neck-depth', 'rib-depth']);

const usable = (landmark: string, value: number): boolean =>
  Number.isFinite(value) && (value > 0 || (value === 0 && MAY_BE_ZERO.has(landmark)));

/**
 * The sizes of one outline while it is drawn: those given, those filled by a proportion, and those
 * that had to give way. Every fill and every change is written down as it is made.
 */
export class Ledger {
  readonly #given: Map<string, number>;
  readonly #drawn = new Map<string, number>();
  readonly assumed: Assumed[] = [];
  readonly notices: OutlineNotice[] = [];

  constructor(sizes: OutlineSizes) {
    this.#given = new Map(Object.entries(sizes).filter(([id, value]) => usable(id, value)));
    for (const [id, value] of Object.entries(sizes))
      if (!usable(id, value)) this.#refuse(id, value);
  }

  #refuse(landmark: string, value: number): void {
    const text = 'This is not a length above nothing, so it is drawn as if it were not given.';
    this.notices.push({ code: 'size-unusable', landmark, givenMm: value, drawnMm: null, text });
  }

  has(landmark: string): boolean {
    return this.#given.has(landmark);
  }

  /** As given, or null. */
  given(landmark: string): number | null {
    return this.#given.get(landmark) ?? null;
  }

  /** As it will be drawn, or null where it is neither given nor filled. */
  drawn(landmark: string): number | null {
    return this.#drawn.get(landmark) ?? this.given(landmark);
  }

  /** The size as given, else `fallback`, written down with the reason. */
  need(landmark: string, fallback: number, why: string): number {
    const known = this.drawn(landmark);
    if (known !== null) return known;
    this.assumed.push({ landmark, mm: mm(fallback), why });
    this.#drawn.set(landmark, fallback);
    return fallback;
  }

  /** Draws the size as `value` instead; a notice says so where it was given. */
  change(landmark: string, value: number, why: string): number {
    const given = this.given(landmark);
    this.#drawn.set(landmark, value);
    if (given === null) this.#refill(landmark, value);
    else {
      const text = `${why}: given {mm:${given.toFixed(1)}}, drawn {mm:${value.toFixed(1)}}.`;
      this.notices.push({ code: 'size-clamped', landmark, givenMm: given, drawnMm: value, text });
    }
    return value;
  }

  #refill(landmark: string, value: number): void {
    const at = this.assumed.findIndex((each) => each.landmark === landmark);
    if (at >= 0) this.assumed[at] = { ...this.assumed[at]!, mm: mm(value) };
  }

  /** Keeps a size at or below `most`. */
  atMost(landmark: string, most: number, why: string): number {
    const now = this.drawn(landmark) ?? 0;
    return now > most ? this.change(landmark, most, why) : now;
  }

  /** Keeps a size at or above `least`. */
  atLeast(landmark: string, least: number, why: string): number {
    const now = this.drawn(landmark) ?? 0;
    return now < least ? this.change(landmark, least, why) : now;
  }

  /** The number that a dimension prints: as given, else as filled. */
  printed(landmark: string): Millimetres {
    return mm(this.given(landmark) ?? this.drawn(landmark) ?? 0);
  }
}
