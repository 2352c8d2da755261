import { type CSSProperties, useId } from 'react';
import { domainOf, hillPath, type Interval, percentIn, type RangeMm } from './range-scale.ts';
import { Weave } from './weave.tsx';
import './range-bar.css';

export interface RangeBarProps {
  /** What is measured, as the reader hears it: `chest around, dried`. */
  readonly label: string;
  readonly range: RangeMm;
  /** Interval that was wanted, in the same terms as the range; null where nothing was. */
  readonly wanted?: Interval | null;
  /** Prints a value in the knitter's unit. */
  readonly print: (mm: number) => string;
  /** Shown from–to in mm, where several strips share one scale; fitted to the numbers otherwise. */
  readonly domain?: Interval;
}

const verdict = (range: RangeMm, wanted: Interval): string => {
  if (range.p95Mm < wanted.min) return 'all below what is wanted';
  if (range.p05Mm > wanted.max) return 'all above what is wanted';
  if (range.p05Mm >= wanted.min && range.p95Mm <= wanted.max) return 'all within what is wanted';
  return 'partly within what is wanted';
};

/** `chest: nine times in ten 45.1 cm to 47.2 cm, most likely 46.2 cm; wanted …`. */
export const rangeSentence = ({ label, range, wanted, print }: RangeBarProps): string => {
  const likely = `${label}: nine times in ten ${print(range.p05Mm)} to ${print(range.p95Mm)}, most likely ${print(range.p50Mm)}`;
  if (!wanted) return likely;
  return `${likely}; wanted ${print(wanted.min)} to ${print(wanted.max)}, ${verdict(range, wanted)}`;
};

const Hill = ({ range, domain }: { readonly range: RangeMm; readonly domain: Interval }) => {
  const id = useId();
  const [low, high] = [percentIn(domain, range.p05Mm), percentIn(domain, range.p95Mm)];
  const middle = `${percentIn(domain, range.p50Mm)}%`;
  return (
    <svg className="df-range-strip" aria-hidden="true">
      <defs>
        <Weave id={id} />
      </defs>
      <line className="df-range-base" x1="0" x2="100%" y1="100%" y2="100%" />
      <svg width="100%" height="100%" viewBox="0 0 100 100" preserveAspectRatio="none">
        <title>{''}</title>
        <path className="df-range-hill" d={hillPath(range, domain)} />
      </svg>
      <rect
        className="df-range-band"
        x={`${low}%`}
        width={`${high - low}%`}
        y="62%"
        height="38%"
        fill={`url(#${id})`}
      />
      <line className="df-range-median" x1={middle} x2={middle} y1="0" y2="100%" />
    </svg>
  );
};

type Lean = 'before' | 'over' | 'after';

interface MarkProps {
  readonly at: number;
  readonly lean: Lean;
  readonly text: string;
}

const Mark = ({ at, lean, text }: MarkProps) => (
  <span className={`df-range-mark df-range-${lean}`} style={{ '--at': `${at}%` } as CSSProperties}>
    {text}
  </span>
);

const Bracket = ({ from, to }: { readonly from: number; readonly to: number }) => (
  <span className="df-range-bracket" style={{ left: `${from}%`, width: `${to - from}%` }} />
);

/**
 * A range against what was wanted, on one line: a hill over a woven band from the 5th to the 95th
 * percentile with a tick at the median, and under it a bracket for the wanted interval.
 */
export const RangeBar = (props: RangeBarProps) => {
  const { range, wanted, print } = props;
  const domain = props.domain ?? domainOf(range, wanted ?? null);
  const at = (mm: number) => percentIn(domain, mm);
  return (
    <div className="df-range" role="img" aria-label={rangeSentence(props)}>
      <div className="df-range-row df-range-top">
        <Mark at={at(range.p50Mm)} lean="over" text={print(range.p50Mm)} />
      </div>
      <Hill range={range} domain={domain} />
      <div className="df-range-row">
        <Mark at={at(range.p05Mm)} lean="before" text={print(range.p05Mm)} />
        <Mark at={at(range.p95Mm)} lean="after" text={print(range.p95Mm)} />
      </div>
      {wanted && (
        <div className="df-range-row df-range-wanted">
          <Bracket from={at(wanted.min)} to={at(wanted.max)} />
          <Mark at={at(wanted.min)} lean="before" text={print(wanted.min)} />
          <Mark at={at(wanted.max)} lean="after" text={print(wanted.max)} />
        </div>
      )}
    </div>
  );
};
