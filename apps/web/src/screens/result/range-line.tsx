import type { Range } from '@dryflat/engine/garment';
import './result.css';
import { percentOn, type Scale } from './scale.ts';

export interface RangeLineProps {
  scale: Scale;
  /** The forecast: nine times in ten between the outer two. */
  range?: Range | null;
  /** What is wanted, drawn as a field behind. */
  wanted?: { readonly min: number; readonly max: number } | null;
  /** What the pattern says: a dashed upright. */
  target?: number | null;
  /** What the tape said: a diamond. */
  mark?: number | null;
}

/** A range on a scale, drawn only: the numbers stand beside it as text. */
export const RangeLine = ({ scale, range, wanted, target, mark }: RangeLineProps) => {
  const at = (value: number): string => `${percentOn(scale, value)}%`;
  const span = (low: number, high: number) => ({
    left: at(low),
    width: `${Math.max(percentOn(scale, high) - percentOn(scale, low), 0.5)}%`,
  });
  return (
    <span className="df-line" aria-hidden="true">
      {wanted && <i className="df-line-wanted" style={span(wanted.min, wanted.max)} />}
      {range && <i className="df-line-range" style={span(range.p05Mm, range.p95Mm)} />}
      {range && <i className="df-line-middle" style={{ left: at(range.p50Mm) }} />}
      {target != null && <i className="df-line-target" style={{ left: at(target) }} />}
      {mark != null && <i className="df-line-mark" style={{ left: at(mark) }} />}
    </span>
  );
};
