import type { Stock } from './types.ts';

/** A wire is threaded only along an edge that is worth it, mm. Common practice, no source. */
export const WIRE_FROM = 200;
/** A wire is held by a pin at least this often, mm. Common practice, no source. */
const WIRE_PINNED_EVERY = 150;

/** Pins along the way of a wire of that span, beside those at its ends: they bear what pulls at it. */
export const pinsForWire = (length: number): number => Math.ceil(length / WIRE_PINNED_EVERY);

/** What is left of the stock while a piece is planned. */
export class Supplies {
  singles: number;
  private readonly combs: number[];
  private readonly wires: number[];

  constructor({ straight, tPins, combs, wires }: Stock) {
    this.singles = straight + tPins;
    const lengths = (list: Stock['combs']) =>
      list
        .flatMap(({ lengthMm, count }) => new Array<number>(Math.min(count, 1000)).fill(lengthMm))
        .sort((a, b) => a - b);
    this.combs = lengths(combs);
    this.wires = lengths(wires);
  }

  /** The shortest wire that spans the length, with the pins that hold it along its way; null where there is none. */
  wireFor(length: number): { lengthMm: number; pins: number } | null {
    const pins = pinsForWire(length);
    const at = this.wires.findIndex((each) => each >= length);
    if (at < 0 || length < WIRE_FROM || pins > this.singles) return null;
    const [lengthMm] = this.wires.splice(at, 1);
    this.singles -= pins;
    return { lengthMm: lengthMm!, pins };
  }

  /** The longest comb of at most that length; null where there is none. */
  combFor(most: number): number | null {
    const at = this.combs.findLastIndex((each) => each <= most);
    return at < 0 ? null : this.combs.splice(at, 1)[0]!;
  }

  /** One of that length, as was planned; false where there is none. */
  take(kind: 'comb' | 'wire', lengthMm: number): boolean {
    const list = kind === 'comb' ? this.combs : this.wires;
    const at = list.indexOf(lengthMm);
    if (at >= 0) list.splice(at, 1);
    return at >= 0;
  }

  /** Something goes back. */
  giveBack(kind: 'comb' | 'wire', lengthMm: number): void {
    const list = kind === 'comb' ? this.combs : this.wires;
    list.push(lengthMm);
    list.sort((a, b) => a - b);
  }
}
