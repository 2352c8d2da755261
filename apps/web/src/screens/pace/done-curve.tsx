import type { PaceForecast } from '@dryflat/engine/routes';
import { useRef } from 'react';
import { useSheet } from '../../schematic/use-sheet.ts';
import { chancePercent } from '../result/chance-words.ts';
import { dayNumber, shortDay } from '../result/day-number.ts';
import { chanceBy, type DaySpan, spanOf, stepsOf, ticksOf } from './curve-scale.ts';

interface CurveProps {
  readonly forecast: PaceForecast;
  readonly from: string;
  readonly by: string | null;
  /** What it says, for those who do not see it. */
  readonly label: string;
}

interface Frame {
  readonly x: (day: number) => number;
  readonly y: (chance: number) => number;
  readonly rem: number;
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly span: DaySpan;
}

const frameOf = (width: number, rem: number, span: DaySpan): Frame => {
  const [left, right] = [2.9 * rem, width - 0.5 * rem];
  const [top, bottom] = [2 * rem, 12.5 * rem];
  const { first, last } = span;
  return {
    x: (day) => left + ((day - first) / (last - first)) * (right - left),
    y: (chance) => bottom - chance * (bottom - top),
    ...{ rem, width, left, right, top, bottom, span },
  };
};

/** The chance of being done, day by day: it rises like a piece on the needle; the wanted day stands in it as a marker. */
export const DoneCurve = ({ forecast, from, by, label }: CurveProps) => {
  const box = useRef<HTMLDivElement>(null);
  const { width, rem } = useSheet(box);
  const { days, done } = forecast;
  const frame = frameOf(width, rem, spanOf(days, from, by));
  return (
    <div ref={box} className="pc-curve">
      <svg width={width} height={16 * rem} role="img" aria-label={label}>
        <Levels frame={frame} />
        <Days frame={frame} />
        <Rise days={days} frame={frame} />
        <NineInTen done={done} frame={frame} />
        {by !== null && by >= from && <Wanted by={by} chance={chanceBy(days, by)} frame={frame} />}
      </svg>
    </div>
  );
};

const Levels = ({ frame: { y, left, right, rem } }: { frame: Frame }) => (
  <g className="pc-levels">
    {[0, 0.5, 1].map((level) => (
      <g key={level}>
        <line x1={left} x2={right} y1={y(level)} y2={y(level)} />
        <text x={left - 0.4 * rem} y={y(level)}>
          {100 * level} %
        </text>
      </g>
    ))}
  </g>
);

const Days = ({ frame }: { frame: Frame }) => {
  const { x, rem, width, left, bottom, span } = frame;
  const most = Math.max(2, Math.floor((width - left) / (3.75 * rem)));
  return (
    <g className="pc-days">
      {ticksOf(span, most).map((day) => (
        <g key={day}>
          <line x1={x(day)} x2={x(day)} y1={bottom} y2={bottom + 0.35 * rem} />
          {x(day) < width - 1.5 * rem && (
            <text x={x(day)} y={bottom + 1.4 * rem}>
              {shortDay(day)}
            </text>
          )}
        </g>
      ))}
    </g>
  );
};

const Rise = ({ days, frame }: { days: PaceForecast['days']; frame: Frame }) => {
  const { x, y, span } = frame;
  const corners = stepsOf(days, span).map(
    ([day, chance]) => `${x(day).toFixed(1)},${y(chance).toFixed(1)}`,
  );
  return (
    <>
      <polygon
        className="pc-area"
        points={[...corners, `${x(span.last)},${y(0)}`, `${x(span.first)},${y(0)}`].join(' ')}
      />
      <polyline className="pc-edge" points={corners.join(' ')} />
    </>
  );
};

/** The range of days below the curve, nine in ten, with its middle. */
const NineInTen = ({ done, frame }: { done: PaceForecast['done']; frame: Frame }) => {
  const { x, rem, bottom, span } = frame;
  if (done.p05 === null) return null;
  const at = (day: string | null): number =>
    x(Math.min(day === null ? span.last : dayNumber(day), span.last));
  const top = bottom + 2.2 * rem;
  return (
    <g className="pc-range">
      <rect
        x={at(done.p05)}
        width={Math.max(at(done.p95) - at(done.p05), 0.5 * rem)}
        y={top}
        height={0.75 * rem}
        rx={0.375 * rem}
      />
      {done.p50 !== null && (
        <line x1={at(done.p50)} x2={at(done.p50)} y1={top - 0.25 * rem} y2={top + rem} />
      )}
    </g>
  );
};

const Wanted = ({ by, chance, frame }: { by: string; chance: number; frame: Frame }) => {
  const { x, y, rem, right, bottom, span } = frame;
  const day = dayNumber(by);
  if (day > span.last) return null;
  const at = x(day);
  const anchor = at > right - 6 * rem ? 'end' : 'start';
  const away = (anchor === 'end' ? -1 : 1) * 0.25 * rem;
  return (
    <g className="pc-wanted">
      <line x1={at} x2={at} y1={0.6 * rem} y2={bottom} />
      <text x={at + away} y={1.2 * rem} textAnchor={anchor}>
        {shortDay(day)}: {chancePercent(chance)}
      </text>
      <circle cx={at} cy={y(chance)} r={0.375 * rem} />
    </g>
  );
};

/** What the parts of the drawing mean. */
export const CurveKey = ({ wanted }: { wanted: boolean }) => (
  <ul className="pc-key">
    <li>
      <i data-of="edge" /> chance of being done
    </li>
    <li>
      <i data-of="range" /> 9 in 10, and the middle
    </li>
    {wanted && (
      <li>
        <i data-of="wanted" /> the day it is wanted
      </li>
    )}
  </ul>
);
