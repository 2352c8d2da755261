import type { Ledger } from './ledger.ts';

/**
 * Usual proportions of each group of garments: flat sizes as shares of one leading size, and what
 * that one is where nothing at all is known. Common practice, no source; they only shape a drawing.
 */
export interface Proportions {
  readonly lead: string;
  readonly typicalMm: number;
  readonly share: Readonly<Record<string, number>>;
}

const UPPER = {
  hem: 1,
  'body-length': 1.22,
  'underarm-length': 0.76,
  'armhole-depth': 0.42,
  'yoke-depth': 0.46,
  'cross-back': 0.76,
  'neck-width': 0.38,
  'front-neck-depth': 0.16,
  'back-neck-depth': 0.045,
  'upper-arm': 0.35,
  cuff: 0.21,
  'sleeve-length': 0.92,
};

export const PROPORTIONS = {
  upper: { lead: 'chest', typicalMm: 490, share: UPPER },
  hat: { lead: 'brim', typicalMm: 250, share: { 'hat-height': 0.86 } },
  sock: {
    lead: 'foot',
    typicalMm: 105,
    share: { 'foot-length': 2.3, leg: 1, 'leg-length': 1.5 },
  },
  mitten: {
    lead: 'hand',
    typicalMm: 100,
    share: { 'hand-length': 1.85, cuff: 0.8, thumb: 0.38, 'thumb-length': 0.62, 'rib-depth': 0.65 },
  },
  shawl: { lead: 'span', typicalMm: 1500, share: { depth: 0.5 } },
  rectangle: { lead: 'width', typicalMm: 500, share: { length: 3.5 } },
  blanket: { lead: 'width', typicalMm: 900, share: { length: 1.2 } },
  other: { lead: 'width', typicalMm: 300, share: { length: 1 } },
} as const satisfies Record<string, Proportions>;

/** Where the leading size is missing, the geometric mean of what each size given makes of it. */
const leadFrom = (ledger: Ledger, { share, typicalMm }: Proportions): [number, string] => {
  const known = Object.entries(share).filter(([id]) => (ledger.given(id) ?? 0) > 0);
  if (known.length === 0) return [typicalMm, 'nothing was given, so a usual size is drawn'];
  const logs = known.map(([id, part]) => Math.log(ledger.given(id)! / part));
  const mean = Math.exp(logs.reduce((a, b) => a + b, 0) / logs.length);
  return [mean, `usual proportion to what was given (${known.map(([id]) => id).join(', ')})`];
};

/** The leading size: as given, or worked back from the others. */
export const needLead = (ledger: Ledger, proportions: Proportions): number => {
  const [mm, why] = leadFrom(ledger, proportions);
  return ledger.need(proportions.lead, mm, why);
};

/** A size filled as its share of the leading one. */
export const needShare = (ledger: Ledger, proportions: Proportions, landmark: string): number => {
  const lead = ledger.drawn(proportions.lead) ?? proportions.typicalMm;
  const share = proportions.share[landmark] ?? 1;
  return ledger.need(
    landmark,
    lead * share,
    `${share} of the ${proportions.lead}, usual proportion`,
  );
};
