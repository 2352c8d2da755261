import { IconButton, useLengths } from '../../kit/index.ts';
import { useView } from '../../store/index.ts';
import type { Lying, Planned } from '../../worker/mat/index.ts';
import { PIN_WORDS, pieceWord, pullWords, useEdgeWords } from './mat-words.ts';
import { nudgeOf } from './nudge.ts';
import { tapeNow } from './tape-now.ts';
import type { PinPlaces } from './use-mat.ts';

const WAYS = [
  ['ArrowUp', 'up', 'up'],
  ['ArrowLeft', 'back', 'to the left'],
  ['ArrowRight', 'onward', 'to the right'],
  ['ArrowDown', 'down', 'down'],
] as const;

/** A shorter gap no tape shows, mm. */
const SEEN = 1;

/** The pin that is being looked at: where it goes, and buttons that do what dragging does. */
export const ChosenPin = ({
  planned,
  places,
  lying,
  chosen,
  choose,
  move,
  still,
}: {
  planned: Planned;
  places: PinPlaces;
  lying: Lying | null;
  chosen: number;
  choose: (pin: number) => void;
  move: (dx: number, dy: number) => void;
  still: boolean;
}) => {
  const { pins } = planned.plan;
  const { length } = useLengths();
  const { units } = useView();
  const edges = useEdgeWords();
  const pin = pins[chosen];
  if (pin === undefined) return null;
  const tapes = tapeNow(pin, places[chosen]!, pins, places, planned.mat);
  const short = lying?.short.find((each) => each.pin === chosen);
  return (
    <section className="df-chosen-pin" aria-label="The chosen pin">
      <div className="df-row df-chosen-head">
        <IconButton
          icon="back"
          label="Pin before"
          isDisabled={chosen === 0}
          onPress={() => choose(chosen - 1)}
        />
        <h3>
          {pieceWord(PIN_WORDS[pin.kind])} {pin.order}
          <span className="df-soft"> of {pins.length}</span>
        </h3>
        <IconButton
          icon="onward"
          label="Next pin"
          isDisabled={chosen === pins.length - 1}
          onPress={() => choose(chosen + 1)}
        />
      </div>
      <p>
        {tapes.map(({ name, mm }, k) => (
          <span key={name}>
            {k > 0 && ', '}
            <strong className="df-mm">{length(mm)}</strong> from {name}
          </span>
        ))}
        .{' '}
        <span className="df-soft">
          On the {edges[pin.edge]}, {pullWords(lying?.pulls[chosen] ?? pin.pullN)}.
        </span>
      </p>
      {lying?.loose.includes(chosen) && <p>The fabric lies clear of it: it holds nothing here.</p>}
      {short && short.mm >= SEEN && <p>The fabric ends {length(short.mm)} before it.</p>}
      {pin.kind === 'wire' ? (
        <p className="df-soft">A wire follows the pins at its two ends.</p>
      ) : (
        <fieldset
          className="df-nudges"
          aria-label={`Move it by ${length(nudgeOf('ArrowRight', false, units)!.dx)}`}
        >
          {WAYS.map(([key, icon, word]) => (
            <IconButton
              key={key}
              look="plain"
              icon={icon}
              label={`Move ${word}`}
              isDisabled={still}
              onPress={(event) => {
                const step = nudgeOf(key, event.shiftKey, units)!;
                move(step.dx, step.dy);
              }}
            />
          ))}
        </fieldset>
      )}
    </section>
  );
};
