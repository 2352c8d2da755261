import type { Stitch } from '../textile/index.ts';
import type { Grams, Millimetres } from '../units/index.ts';

/** `width` runs along the courses (stitches), `length` along the wales (rows). */
export type Direction = 'width' | 'length';

/** States in which a specimen is read at rest. */
export type RestState = 'asKnit' | 'wet' | 'dried' | 'rewashed';

/** Stitches or rows counted over a length. `stretched`: read while pulling, bounds the pitch from above. */
export interface CountReading {
  readonly kind: 'count';
  readonly id: string;
  readonly direction: Direction;
  readonly count: number;
  readonly over: Millimetres;
  readonly state: RestState;
  /** Of `dried` only: dried on pins, so that what was gained by them is still in it; or perhaps. Else flat. */
  readonly pinned?: true | 'perhaps';
  readonly read: 'flat' | 'stretched';
  /** Readings of one specimen with the same place share what is peculiar to that place. */
  readonly place: string | null;
}

/** A whole extent by tape; without a count it tells only of changes between states. */
export interface ExtentReading {
  readonly kind: 'extent';
  readonly id: string;
  readonly direction: Direction;
  readonly extent: Millimetres;
  readonly count: number | null;
  readonly state: RestState;
  /** Of `dried` only: dried on pins, so that what was gained by them is still in it; or perhaps. Else flat. */
  readonly pinned?: true | 'perhaps';
  readonly read: 'flat' | 'stretched';
  /** Readings of one specimen with the same place share what is peculiar to that place. */
  readonly place: string | null;
}

/** A known mass hung from a clipped strip of known width. */
export interface HangReading {
  readonly kind: 'hang';
  readonly id: string;
  readonly direction: Direction;
  readonly mass: Grams;
  readonly clipped: Millimetres;
  readonly before: Millimetres;
  readonly after: Millimetres;
  readonly state: RestState;
}

/** The same marks at wet rest, while pinned, and dried with the pins out. */
export interface SetReading {
  readonly kind: 'set';
  readonly id: string;
  readonly direction: Direction;
  readonly rest: Millimetres;
  readonly pinned: Millimetres;
  readonly dried: Millimetres;
}

export type Reading = CountReading | ExtentReading | HangReading | SetReading;

/** A thing that was measured; its readings share how it differs from the garment. */
export interface Specimen {
  readonly id: string;
  readonly name: string;
  readonly kind: 'swatch' | 'part' | 'piece' | 'past-garment';
  readonly stitch: Stitch;
  readonly workedAsGarment: boolean;
  /** Needle that it was worked on; the garment's where left out. */
  readonly needle?: Millimetres;
  readonly washed: 'not' | 'as-garment' | 'otherwise';
  readonly width: Millimetres | null;
  readonly height: Millimetres | null;
  readonly readings: readonly Reading[];
}
