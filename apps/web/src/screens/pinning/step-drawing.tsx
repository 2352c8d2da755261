import type { MatStep, MatWork } from '@dryflat/record';
import { type RefObject, useEffect, useRef, useState } from 'react';
import { PinMark } from '../mat/pin-mark.tsx';
import { frameAround, outlineOf, referencesOf, type StepFrame, type Xy } from './step-frame.ts';
import { LETTERS } from './step-numbers.tsx';

/** Room for the ring around the next pin and for letters, px. */
const MARGIN = 34;
/** A tape shorter than this on the screen has its letter behind the reference, px. */
const SHORT = 64;
const UNTIL_MEASURED = { width: 358, height: 240 };

/** The piece as it lies: what is in, the next pin, and the two tapes to it. */
export const StepDrawing = ({ work }: { work: MatWork }) => {
  const around = useRef<HTMLDivElement>(null);
  const size = useSize(around);
  const step = work.steps[work.at]!;
  const outline = outlineOf(work);
  const references = referencesOf(work, step);
  const next: Xy = [step.xMm, step.yMm];
  const needed = [...outline, next, ...references.filter((each) => each !== null)];
  const frame = frameAround(needed, size, Math.min(MARGIN, size.height / 7));
  const px = ([x, y]: Xy): Xy => [(x - frame.x) * frame.scale, (y - frame.y) * frame.scale];
  return (
    <div className="df-step-drawing" ref={around}>
      <svg
        width={size.width}
        height={size.height}
        role="img"
        aria-label={`Where step ${work.at + 1} is on the piece; told in words below`}
      >
        <MatEdge work={work} px={px} />
        <path className="df-step-outline" d={pathOf(outline.map(px))} />
        {work.steps.map((each, k) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a step is its place in the plan
          <Placed key={k} step={each} px={px} frame={frame} shown={k !== work.at} />
        ))}
        {references.map(
          (each, k) => each && <Tape key={LETTERS[k]} from={px(each)} to={px(next)} k={k} />,
        )}
        <g transform={`translate(${px(next).join(' ')})`}>
          <circle className="df-step-pulse" r="20" />
          <circle className="df-step-ring" r="20" />
          <g transform="scale(1.7)">
            <PinMark pin={asPin(step)} scale={frame.scale / 1.7} />
          </g>
        </g>
      </svg>
    </div>
  );
};

const asPin = ({ kind, along }: MatStep) => ({ kind, along: along ?? null });

const pathOf = (points: readonly Xy[]): string =>
  points.length < 3
    ? ''
    : `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}Z`;

const Placed = ({
  step,
  px,
  frame,
  shown,
}: {
  step: MatStep;
  px: (at: Xy) => Xy;
  frame: StepFrame;
  shown: boolean;
}) => {
  if (!shown) return null;
  const [x, y] = px([step.xMm, step.yMm]);
  return (
    <g transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
      {step.done === 'in' ? (
        <PinMark pin={asPin(step)} scale={frame.scale} />
      ) : (
        <circle
          className="df-step-open"
          data-passed={step.done === 'passed' || undefined}
          r="2.5"
        />
      )}
    </g>
  );
};

/** A tape from a reference to the next pin, with its letter where it begins. */
const Tape = ({ from, to, k }: { from: Xy; to: Xy; k: number }) => {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const size = Math.hypot(dx, dy) || 1;
  // The letter stands clear of the ring.
  const off = size < SHORT ? -17 : size * 0.3;
  const [x, y] = [from[0] + (dx * off) / size, from[1] + (dy * off) / size];
  return (
    <g className="df-step-tape" data-letter={LETTERS[k]}>
      <line x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} />
      <rect x={from[0] - 5} y={from[1] - 5} width="10" height="10" />
      <circle cx={x} cy={y} r="11" />
      <text x={x} y={y}>
        {LETTERS[k]}
      </text>
    </g>
  );
};

const MatEdge = ({ work: { lies }, px }: { work: MatWork; px: (at: Xy) => Xy }) => {
  if (lies === undefined) return null;
  const { widthMm, heightMm, tileMm } = lies.mat;
  const steps = (size: number): number[] =>
    tileMm > 0
      ? Array.from({ length: Math.ceil(size / tileMm - 1e-9) + 1 }, (_, i) =>
          Math.min(i * tileMm, size),
        )
      : [0, size];
  const [[left, top], [right, bottom]] = [px([0, 0]), px([widthMm, heightMm])];
  const lines = [
    ...steps(widthMm).map((x) => `M${px([x, 0])[0]} ${top}V${bottom}`),
    ...steps(heightMm).map((y) => `M${left} ${px([0, y])[1]}H${right}`),
  ];
  return <path className="df-step-mat" d={lines.join('')} />;
};

const useSize = (ref: RefObject<HTMLElement | null>) => {
  const [size, setSize] = useState(UNTIL_MEASURED);
  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const observer = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = element;
      setSize((old) => (old.width === width && old.height === height ? old : { width, height }));
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return size;
};
