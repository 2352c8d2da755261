import type { Recount, RecountedLine, Step } from '@dryflat/engine/counts';
import { Button, toast, useLengths, useWords } from '../../kit/index.ts';
import { useView } from '../../store/index.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { copyText } from './copy-text.ts';
import { linesOf } from './counts-text.ts';

/** A smaller error is nothing by a tape. */
const SAME_MM = 0.5;

/** Each line of the pattern beside what it becomes, and where the work has come to by then. */
export const RecountTable = ({
  steps,
  recount,
  name,
}: {
  steps: readonly Step[];
  recount: Recount;
  name: string;
}) => {
  const { words } = useView();
  const { plain } = useSentences();
  const word = useWords();
  const theirs = linesOf(steps, words, plain);
  const mine = linesOf(recount.steps, words, plain);
  const copy = async () => {
    const copied = await copyText(`${name}\n\n${mine.join('\n')}\n`);
    toast(copied ? `${name}, recounted, is copied.` : 'This browser does not let it be copied.');
  };
  let at = 0;
  return (
    <>
      <table className="co-table co-recount">
        <caption className="df-unseen">{name}: the pattern’s text, recounted</caption>
        <thead>
          <tr>
            <th scope="col">The pattern</th>
            <th scope="col">At my {word('gauge')}</th>
          </tr>
        </thead>
        <tbody>
          {recount.lines.map((line, i) => {
            const from = at;
            at += line.mine.length;
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: the table is written anew as a whole
              <tr key={i}>
                <td>
                  {theirs[i]}
                  <Reached count={line.stitches?.theirs ?? null} rows={line.rows.theirs} />
                </td>
                <td>
                  {line.mine.length === 0 ? 'Nothing to do.' : mine.slice(from, at).join(' ')}
                  <Reached count={line.stitches?.mine ?? null} rows={line.rows.mine} />
                  <Off line={line} />
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <div className="df-row co-not-printed">
        <Button icon="copy" onPress={copy}>
          Copy, recounted<span className="df-unseen">: {name}</span>
        </Button>
      </div>
    </>
  );
};

const Reached = ({ count, rows }: { count: number | null; rows: number }) => (
  <span className="co-note">
    {count === null ? '' : `${count} stitches, `}
    {rows} rows
  </span>
);

const Off = ({ line: { stitches, rows } }: { line: RecountedLine }) => {
  const { signed } = useLengths();
  const wide = stitches === null || Math.abs(stitches.errorMm) < SAME_MM ? null : stitches.errorMm;
  const tall = Math.abs(rows.errorMm) < SAME_MM ? null : rows.errorMm;
  if (wide === null && tall === null) return null;
  const parts = [
    ...(wide === null ? [] : [`${signed(wide)} wide`]),
    ...(tall === null ? [] : [`${signed(tall)} long`]),
  ];
  return <span className="co-note">off by {parts.join(', ')}</span>;
};
