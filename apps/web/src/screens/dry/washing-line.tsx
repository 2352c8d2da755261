import type { DryingForecast, Spread } from '@dryflat/engine/drying';
import { useRef } from 'react';
import { useSheet } from '../../schematic/use-sheet.ts';
import { dayWords, timeWords } from './clock-words.ts';
import { apart, clockTicks, hourEnds, massEnds, scale, tickStep } from './line-scale.ts';

const HOUR = 3_600_000;

export interface LineProps {
  readonly forecast: DryingForecast;
  readonly begun: number;
  readonly now: number;
  /** Weighings, hours since it was laid out and grams. */
  readonly weighed: readonly { readonly hours: number; readonly massG: number }[];
  /** What it says, for those who do not see it. */
  readonly label: string;
}

/**
 * A washing line across the hours: a numbered peg for each time to look or turn, below it the water
 * that is left, as a band with what was weighed, down to what the scale shows when dry.
 */
export const WashingLine = (props: LineProps) => {
  const { forecast, begun, now, weighed, label } = props;
  const box = useRef<HTMLDivElement>(null);
  const { width, rem } = useSheet(box);
  const height = 17 * rem;
  const edge = { left: 3.2 * rem, right: 1 * rem, top: 4.4 * rem, bottom: 2.6 * rem };
  const nowHours = (now - begun) / HOUR;
  const hours = hourEnds(forecast, nowHours);
  const masses = massEnds(
    forecast,
    weighed.map(({ massG }) => massG),
  );
  const x = scale(hours, edge.left, width - edge.right);
  const y = scale(masses, height - edge.bottom, edge.top);
  return (
    <div ref={box} className="df-wash">
      <svg width={width} height={height} role="img" aria-label={label}>
        <Hours {...{ begun, x, rem, width, height, edge, last: hours.high, now }} />
        <Band course={forecast.course} x={x} y={y} />
        <DryAt massG={forecast.dryAtG} {...{ x, y, width, edge, rem }} />
        {weighed.map((each) => (
          <circle
            key={`${each.hours} ${each.massG}`}
            className="df-wash-dot"
            cx={x(each.hours)}
            cy={y(each.massG)}
            r={0.34 * rem}
          />
        ))}
        {nowHours <= hours.high && (
          <g className="df-wash-now">
            <line x1={x(nowHours)} x2={x(nowHours)} y1={edge.top} y2={height - edge.bottom} />
            <text x={Math.min(x(nowHours) + 0.3 * rem, width - 2.4 * rem)} y={edge.top + 0.7 * rem}>
              now
            </text>
          </g>
        )}
        <Pegs forecast={forecast} x={x} rem={rem} width={width} top={edge.top} />
      </svg>
    </div>
  );
};

type Scale = (value: number) => number;
interface Edge {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const Hours = ({
  begun,
  x,
  rem,
  width,
  height,
  edge,
  last,
  now,
}: {
  begun: number;
  x: Scale;
  rem: number;
  width: number;
  height: number;
  edge: Edge;
  last: number;
  now: number;
}) => {
  const most = Math.max(2, Math.floor((width - edge.left) / (4 * rem)));
  const ticks = clockTicks(begun, begun + last * HOUR, tickStep(last, most));
  const bottom = height - edge.bottom;
  return (
    <g className="df-wash-hours">
      {ticks.map(({ ms, day }) => {
        const at = x((ms - begun) / HOUR);
        return (
          <g key={ms} data-day={day || undefined}>
            <line x1={at} x2={at} y1={edge.top} y2={bottom + 0.3 * rem} />
            {at < width - 1.2 * rem && (
              <text x={at} y={bottom + 1.3 * rem}>
                {day ? dayWords(ms, now).slice(0, 10) : timeWords(ms)}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
};

const Band = ({ course, x, y }: { course: DryingForecast['course']; x: Scale; y: Scale }) => {
  const through = (of: (massG: Spread) => number) =>
    course.map(({ hours, massG }) => `${x(hours).toFixed(1)},${y(of(massG)).toFixed(1)}`);
  const upper = through(({ p95 }) => p95);
  const lower = through(({ p5 }) => p5).reverse();
  return (
    <>
      <polygon className="df-wash-band" points={[...upper, ...lower].join(' ')} />
      <polyline className="df-wash-middle" points={through(({ p50 }) => p50).join(' ')} />
    </>
  );
};

const DryAt = ({
  massG,
  y,
  width,
  edge,
  rem,
}: {
  massG: number;
  y: Scale;
  width: number;
  edge: Edge;
  rem: number;
}) => (
  <g className="df-wash-dry">
    <line x1={edge.left} x2={width - edge.right} y1={y(massG)} y2={y(massG)} />
    <text x={edge.left - 0.4 * rem} y={y(massG)}>
      {Math.round(massG)} g
    </text>
  </g>
);

/** Heads of the pegs stand apart; a thread leads each to its hour. */
const Pegs = ({
  forecast,
  x,
  rem,
  width,
  top,
}: {
  forecast: DryingForecast;
  x: Scale;
  rem: number;
  width: number;
  top: number;
}) => {
  const places = forecast.marks.map(({ hours }) => x(hours));
  const heads = apart(places, 2 * rem, width - 1.1 * rem);
  const rope = 1.4 * rem;
  return (
    <g className="df-wash-pegs">
      <path
        className="df-wash-rope"
        d={`M0 ${rope - 0.5 * rem} Q ${width / 2} ${rope + 0.5 * rem} ${width} ${rope - 0.5 * rem}`}
      />
      {forecast.marks.map(({ id, kind }, k) => (
        <g key={id} data-kind={kind}>
          <polyline points={`${heads[k]},${rope + rem} ${places[k]},${top}`} />
          <line x1={places[k]} x2={places[k]} y1={top} y2={top + 0.6 * rem} />
          <rect
            x={heads[k]! - 0.8 * rem}
            y={rope - 0.7 * rem}
            width={1.6 * rem}
            height={1.9 * rem}
            rx={0.35 * rem}
          />
          <text x={heads[k]} y={rope + 0.27 * rem}>
            {k + 1}
          </text>
        </g>
      ))}
    </g>
  );
};
