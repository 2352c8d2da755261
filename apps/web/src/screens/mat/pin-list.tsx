import { memo } from 'react';
import { useLengths } from '../../kit/index.ts';
import type { Planned } from '../../worker/mat/index.ts';
import { PIN_WORDS, pieceWord, useEdgeWords } from './mat-words.ts';
import { tapeNow } from './tape-now.ts';
import type { PinPlaces } from './use-mat.ts';

/** Every pin in its order, with the two distances by which a tape finds its place. */
export const PinList = memo(
  ({
    planned,
    places,
    moved,
  }: {
    planned: Planned;
    places: PinPlaces;
    moved: ReadonlySet<number>;
  }) => {
    const { length } = useLengths();
    const edges = useEdgeWords();
    const { pins } = planned.plan;
    return (
      <ol className="df-pin-list">
        {pins.map((pin, k) => {
          const tapes = tapeNow(pin, places[k]!, pins, places, planned.mat);
          return (
            <li key={pin.order} value={pin.order}>
              <strong>{pieceWord(PIN_WORDS[pin.kind])}</strong>
              {pin.along && ` of ${length(pin.along.lengthMm)}, its middle`} on the{' '}
              {edges[pin.edge]}
              {moved.has(k) && <em> (moved by you)</em>}
              <ul>
                {tapes.map(({ name, mm }) => (
                  <li key={name}>
                    <span className="df-mm">{length(mm)}</span> from {name}
                  </li>
                ))}
              </ul>
            </li>
          );
        })}
      </ol>
    );
  },
);
