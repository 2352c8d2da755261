import type { PinKind } from '@dryflat/engine/blocking';

/** What to take into the hand, drawn large: a head on a shaft, a bar on a shaft, prongs on a back, a bent rod. */
const SHAPES: Readonly<Record<PinKind, string>> = {
  straight: 'M15 49 45 15M15 49l-4 6M45 15',
  't-pin': 'M32 14V56M14 14H50',
  comb: 'M8 18H56M13 18V50M24 18V50M35 18V50M46 18V50M56 18V50M8 18V50',
  wire: 'M6 44C22 20 42 20 58 44M6 44v6M58 44v6',
};

export const TakeShape = ({ kind }: { kind: PinKind }) => (
  <svg className="df-take-shape" viewBox="0 0 64 64" aria-hidden="true">
    <path d={SHAPES[kind]} />
    {kind === 'straight' && <circle cx="47" cy="13" r="7" />}
  </svg>
);
