import { type MatWork, pinsForEachWire, pinsIn, pinWords } from '@dryflat/record';
import { useLengths } from '../../kit/index.ts';
import { countOf, PIN_WORDS, pieceWord, useEdgeWords } from '../mat/mat-words.ts';
import { lieWords, referenceWords } from './step-words.ts';
import { TakeShape } from './take-shape.tsx';
import { TapeNumber } from './tape-number.tsx';
import { AWAKE_WORDS, type Awake } from './use-awake.ts';

export const LETTERS = ['A', 'B'] as const;

/** What to take, and how far from where it goes in. */
export const StepNumbers = ({
  work,
  awake,
  listening,
  deaf,
}: {
  work: MatWork;
  awake: Awake;
  listening: boolean;
  deaf: string | null;
}) => {
  const { length } = useLengths();
  const edges = useEdgeWords();
  const step = work.steps[work.at]!;
  const { kind, edge, along, from, done } = step;
  const pins = pinsForEachWire(work)[work.at] ?? 0;
  return (
    <section className="df-step-numbers" aria-labelledby="df-step-title">
      <div className="df-step-take">
        <TakeShape kind={kind} />
        <div>
          <h2 id="df-step-title">
            <span>{pieceWord(PIN_WORDS[kind])}</span>
            <span className="df-step-of">
              {' '}
              step {work.at + 1} of {work.steps.length}
            </span>
          </h2>
          <p>
            on the {edges[edge]}
            {along && `, ${length(along.lengthMm)} long, ${lieWords(along)}; measure to its middle`}
            {pins > 0 && `; ${countOf('straight', pins)} along it`}
            {work.layers === 2 && ', through both layers'}
            {done && (
              <strong className="df-step-done">{done === 'in' ? 'It is in' : 'Left out'}</strong>
            )}
          </p>
        </div>
      </div>
      <ul className="df-step-tapes">
        {from.map(({ name, mm }, k) => (
          <li key={LETTERS[k]}>
            <b className="df-tape-letter">{LETTERS[k]}</b>
            <TapeNumber mm={mm} />
            <span className="df-tape-from">from {referenceWords(name)}</span>
          </li>
        ))}
      </ul>
      <p className="df-step-count">
        <span>In the mat: {pinWords(pinsIn(work))}.</span>
        {work.at === 0 && (
          <span> Pins are sharp: keep children and pets away. Each that goes in is counted.</span>
        )}
        {awake !== 'kept' && <span> {AWAKE_WORDS[awake]}</span>}
        {listening && <span> {deaf ?? 'Listening for “next”, “back”, “again”.'}</span>}
      </p>
    </section>
  );
};
