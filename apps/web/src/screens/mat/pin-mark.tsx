import type { PinPlaced } from '@dryflat/engine/blocking';

/** One thing on the mat, drawn at 0, 0: told apart by its shape. `scale`: px per mm. */
export const PinMark = ({
  pin,
  scale,
}: {
  pin: Pick<PinPlaced, 'kind' | 'along'>;
  scale: number;
}) => {
  if (pin.along === null)
    return pin.kind === 't-pin' ? (
      <>
        <path className="df-pin-halo" d="M-6 -4H6M0 -4V5" />
        <path className="df-pin-line" d="M-6 -4H6M0 -4V5" />
      </>
    ) : (
      <circle className="df-pin-head" r="4" />
    );
  const { lengthMm, dx, dy } = pin.along;
  const half = (lengthMm * scale) / 2;
  const size = Math.hypot(dx, dy) || 1;
  const [x, y] = [(half * dx) / size, (half * dy) / size];
  const d = `M${-x} ${-y}L${x} ${y}`;
  return (
    <>
      <path className="df-pin-halo" d={d} />
      <path className={pin.kind === 'comb' ? 'df-pin-comb' : 'df-pin-wire'} d={d} />
    </>
  );
};

/** The shapes of a plan and what they are. */
export const PinSample = ({ kind }: { kind: PinPlaced['kind'] }) => {
  const along = kind === 'comb' || kind === 'wire' ? { lengthMm: 18, dx: 1, dy: 0 } : null;
  return (
    <svg className="df-pin-sample" viewBox="-12 -10 24 20" aria-hidden="true">
      <PinMark pin={{ kind, along }} scale={1} />
    </svg>
  );
};
