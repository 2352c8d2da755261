import type { PinPlaced } from '@dryflat/engine/blocking';
import { useMemo } from 'react';
import type { MatFrame } from './mat-frame.ts';
import { PinMark } from './pin-mark.tsx';
import { placeLabels } from './place-labels.ts';
import type { PinPlaces } from './use-mat.ts';

export interface PinsLayerProps {
  readonly pins: readonly PinPlaced[];
  readonly places: PinPlaces;
  readonly frame: MatFrame;
  readonly chosen: number;
  readonly rem: number;
  readonly loose: ReadonlySet<number>;
  /** Which way is out of the piece at each pin, a unit vector. */
  readonly out: readonly { readonly x: number; readonly y: number }[];
}

/** Pins with their order numbers, which stand outside the piece; the chosen one has a ring. */
export const PinsLayer = ({ pins, places, frame, chosen, rem, loose, out }: PinsLayerProps) => {
  const spots = places.map(([x, y]) => ({
    x: (x - frame.x) * frame.scale,
    y: (y - frame.y) * frame.scale,
  }));
  const labels = useLabels(pins, spots, chosen, rem, out);
  return (
    <g>
      {pins.map((pin, k) => {
        const { x, y } = spots[k]!;
        const label = labels[k]!;
        return (
          <g
            key={pin.order}
            data-chosen={k === chosen || undefined}
            data-loose={loose.has(k) || undefined}
          >
            <g transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
              {k === chosen && <circle className="df-pin-ring" r="14" />}
              <PinMark pin={pin} scale={frame.scale} />
            </g>
            {label.shown && (
              <text className="df-pin-number" x={label.x} y={label.y} fontSize={0.75 * rem}>
                {pin.order}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
};

const useLabels = (
  pins: readonly PinPlaced[],
  spots: readonly { readonly x: number; readonly y: number }[],
  chosen: number,
  rem: number,
  out: PinsLayerProps['out'],
) =>
  useMemo(() => {
    // The chosen pin has its number first, then the others in their order.
    const order = [...pins.keys()].sort(
      (a, b) => Number(b === chosen) - Number(a === chosen) || a - b,
    );
    const placed = placeLabels(
      order.map((k) => {
        const { x, y } = spots[k]!;
        return {
          x,
          y,
          outX: out[k]?.x ?? 0,
          outY: out[k]?.y ?? -1,
          width: rem * (0.25 + 0.45 * String(pins[k]!.order).length),
          height: 0.8 * rem,
        };
      }),
    );
    return pins.map((_, k) => placed[order.indexOf(k)]!);
  }, [pins, spots, chosen, rem, out]);
