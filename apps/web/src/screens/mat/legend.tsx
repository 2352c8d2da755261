import { memo } from 'react';
import { useLengths } from '../../kit/index.ts';
import type { Lying, Planned } from '../../worker/mat/index.ts';
import { PIN_KINDS, PIN_WORDS, percent, pieceWord, useEdgeWords } from './mat-words.ts';
import { PinSample } from './pin-mark.tsx';
import { cssRamp } from './stretch-scale.ts';

const LINES = [
  ['rest', 'lies wet, before any pin'],
  ['wanted', 'wanted'],
  ['pinned', 'as pinned'],
] as const;

/** What colours, lines and shapes mean, with the worst place in numbers. */
export const Legend = memo(
  ({ planned, lying, most }: { planned: Planned; lying: Lying | null; most: number }) => {
    const { length } = useLengths();
    const { pins, stretchUse } = planned.plan;
    const worst = lying?.worst ?? { ...stretchUse, ...stretchUse.where };
    const edges = useEdgeWords();
    const { widthMm, heightMm } = planned.mat;
    const onMat = worst.x >= 0 && worst.y >= 0 && worst.x <= widthMm && worst.y <= heightMm;
    const kinds = PIN_KINDS.filter((kind) => pins.some((pin) => pin.kind === kind));
    return (
      <div className="df-mat-legend">
        <div className="df-ramp">
          <span>How far it is stretched over its wet size</span>
          <i style={{ background: cssRamp() }} aria-hidden="true" />
          <span className="df-ramp-ends">
            <span>none</span>
            <span>{percent(most / 2)}</span>
            <span>{percent(most)}</span>
          </span>
        </div>
        <p className="df-worst">
          At its worst the {worst.edge === null ? 'fabric' : edges[worst.edge]} is stretched to{' '}
          <strong className="df-mm">{percent(worst.overWet)}</strong> over its wet size{' '}
          {worst.along === 'width' ? 'across' : 'lengthwise'}, at the cross
          {onMat
            ? `: ${length(worst.x)} from the left of the mat, ${length(worst.y)} from its top`
            : ', beyond the edge of the mat'}
        </p>
        <ul className="df-mat-key">
          {LINES.map(([line, word]) => (
            <li key={line}>
              <svg viewBox="0 0 28 8" aria-hidden="true">
                <path className={`df-mat-${line}`} d="M1 4H27" />
              </svg>
              {word}
            </li>
          ))}
          {kinds.map((kind) => (
            <li key={kind}>
              <PinSample kind={kind} />
              {pieceWord(PIN_WORDS[kind])}
            </li>
          ))}
        </ul>
      </div>
    );
  },
);
