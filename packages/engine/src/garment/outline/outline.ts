import type { GarmentKind } from '../kinds.ts';
import { hat, mitten, sock } from './accessories.ts';
import { closedBody, openBody } from './body.ts';
import { dimensioner } from './dimension.ts';
import { halfRound, rectangle, triangle } from './flat-shapes.ts';
import { Ledger } from './ledger.ts';
import { PROPORTIONS } from './proportions.ts';
import { sleeve } from './sleeve.ts';
import type { EdgeKind, Outline, OutlinePiece, OutlineSizes } from './types.ts';
import { type Construction, settleUpper } from './upper-sizes.ts';

type Draw = (ledger: Ledger) => OutlinePiece[];

const upper =
  (construction: Construction, open: boolean, sleeved: (ledger: Ledger) => boolean): Draw =>
  (ledger) => {
    const sizes = settleUpper(ledger, construction);
    const dim = dimensioner(ledger);
    const arms = sleeved(ledger);
    const edge: EdgeKind = arms ? 'seam' : 'picked-up';
    const body = (open ? openBody : closedBody)(sizes, dim, edge);
    return arms ? [...body, sleeve(ledger, sizes, dim)] : body;
  };

const always = () => true;
const never = () => false;
/** A top has sleeves where it has a sleeve's number; then a short one where no length is given. */
const ifGiven = (ledger: Ledger): boolean => {
  const arm = ledger.given('upper-arm');
  if (arm === null) return ledger.has('sleeve-length') || ledger.has('cuff');
  ledger.need('cuff', 0.95 * arm, '0.95 of the upper arm, as in a short sleeve');
  ledger.need('sleeve-length', 0.35 * arm, '0.35 of the upper arm, as in a short sleeve');
  return true;
};

const one =
  (draw: (ledger: Ledger, dim: ReturnType<typeof dimensioner>) => OutlinePiece): Draw =>
  (ledger) => [draw(ledger, dimensioner(ledger))];

const DRAW: Readonly<Record<GarmentKind, Draw>> = {
  'pullover-drop-shoulder': upper('drop-shoulder', false, always),
  'pullover-set-in': upper('set-in', false, always),
  'pullover-raglan': upper('raglan', false, always),
  'pullover-yoke': upper('yoke', false, always),
  'cardigan-drop-shoulder': upper('drop-shoulder', true, always),
  'cardigan-set-in': upper('set-in', true, always),
  'cardigan-raglan': upper('raglan', true, always),
  'cardigan-yoke': upper('yoke', true, always),
  vest: upper('set-in', false, never),
  top: upper('set-in', false, ifGiven),
  hat: one(hat),
  sock: one(sock),
  mitten: one(mitten),
  'shawl-triangle': one(triangle),
  'shawl-rectangle': one((l, dim) => rectangle(l, dim, 'shawl', PROPORTIONS.rectangle)),
  'shawl-half-round': one(halfRound),
  blanket: one((l, dim) => rectangle(l, dim, 'blanket', PROPORTIONS.blanket)),
  other: one((l, dim) => rectangle(l, dim, 'piece', PROPORTIONS.other)),
};

/**
 * The pieces of a garment of that kind, to scale, with every proportion that was filled in and every
 * size that had to give way.
 *
 * @param sizes flat millimetres by landmark; unknown landmarks are ignored, missing ones filled, and
 *   numbers that are no length count as missing, with a notice.
 * @returns pieces in the order they are knit. Every outline is finite, closed and crosses itself
 *   nowhere, whatever was given. Never fails.
 */
export const outlineOf = (kind: GarmentKind, sizes: OutlineSizes): Outline => {
  const ledger = new Ledger(sizes);
  const pieces = DRAW[kind](ledger);
  return { pieces, assumed: ledger.assumed, notices: ledger.notices };
};

/** The pieces alone, for callers that have no place for a notice. */
export const outlinePieces = (kind: GarmentKind, sizes: OutlineSizes): readonly OutlinePiece[] =>
  outlineOf(kind, sizes).pieces;

/** Outline sizes from lengths that say how they were given: girths taken around are halved. */
export const outlineSizes = (
  lengths: readonly { landmark: string; span: 'flat' | 'around'; mm: number | null }[],
): OutlineSizes =>
  Object.fromEntries(
    lengths.flatMap(({ landmark, span, mm }) =>
      mm === null ? [] : [[landmark, (span === 'around' ? mm / 2 : mm) as OutlineSizes[string]]],
    ),
  ) as OutlineSizes;
