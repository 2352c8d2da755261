import type { SizeTable } from '@dryflat/engine/garment';
import { useMemo } from 'react';
import { asSentence } from '../../kit/as-sentence.ts';
import { useLengths } from '../../kit/index.ts';
import { textLines } from './text-lines.ts';

/** The text with its numbers and names made out, and each fault under the line that it stands in. */
export const ReadText = ({ text, table }: { text: string; table: SizeTable }) => {
  const { sentence } = useLengths();
  const lines = useMemo(() => textLines(text, table), [text, table]);
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
