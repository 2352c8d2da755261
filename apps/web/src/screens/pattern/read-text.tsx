import type { SizeTable } from '@dryflat/engine/garment';
import { useMemo } from 'react';
import { asSentence } from '../../kit/as-sentence.ts';
import { Disclosure, useLengths } from '../../kit/index.ts';
import { type TextLine, textLines } from './text-lines.ts';

/** How the text was read: open where something in it was not, with the lines that hold no measurement folded. */
export const ReadText = ({ text, table }: { text: string; table: SizeTable }) => {
  const lines = useMemo(() => textLines(text, table), [text, table]);
  const idle = lines.filter((line) => line.idle);
  const told = lines.filter((line) => !line.idle);
  const shown = told.some(({ unread }) => unread.length > 0);
  return (
    <>
      {shown && <Lines lines={told} />}
      {!shown && told.length > 0 && (
        <Disclosure
          title={idle.length === 0 ? 'All of it was read. See how' : linesRead(told.length)}
        >
          <Lines lines={told} />
        </Disclosure>
      )}
      {idle.length > 0 && (
        <Disclosure
          title={
            idle.length === 1
              ? '1 line holds no measurement'
              : `${idle.length} lines hold no measurement`
          }
        >
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls has to be reached by keyboard */}
          <section className="pt-text pt-idle" tabIndex={0} aria-label="Lines without measurements">
            {idle.map(textOf).join('\n')}
          </section>
        </Disclosure>
      )}
    </>
  );
};

const linesRead = (count: number): string =>
  count === 1 ? '1 line was read. See how' : `${count} lines were read. See how`;

const textOf = ({ parts }: TextLine): string => parts.map(({ text }) => text).join('');

/** Lines with their numbers and names made out, and each fault under the line that it stands in. */
const Lines = ({ lines }: { lines: readonly TextLine[] }) => {
  const { sentence } = useLengths();
  return (
    <div className="pt-text">
      {lines.map((line) => (
        <div key={line.start}>
          <p>
            {line.parts.map(({ text: part, as }, i) =>
              as === 'unread' ? (
                // biome-ignore lint/suspicious/noArrayIndexKey: parts are replaced whole
                <mark key={i}>{part}</mark>
              ) : (
                // biome-ignore lint/suspicious/noArrayIndexKey: parts are replaced whole
                <span key={i} data-as={as}>
                  {part}
                </span>
              ),
            )}
          </p>
          {line.unread.map(({ from, text: part, fault }) => (
            <p key={from[0]} className="pt-fault">
              <q>{part.trim()}</q> {asSentence(sentence(fault.problem))} {sentence(fault.mend)}
            </p>
          ))}
        </div>
      ))}
    </div>
  );
};
