import { ChoiceChips, Notice, useWords } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { asGauge, printGauge } from './gauge-text.ts';
import { gaugesLeftOut, mainGauge, type WholeGauge, wholeGauges } from './reading.ts';
import type { Reading } from './use-reading.ts';

const WASHED = {
  dried: ', washed and dried',
  asKnit: ', before any wash',
} as const;

/** `18 sts and 24 rows = 4 in, washed and dried`. */
const inWords = ({ stitches, rows, state }: WholeGauge): string =>
  `${printGauge(asGauge(stitches, rows))}${state === null ? '' : WASHED[state]}`;

/** The gauge that was read, which of several is meant, and what it would replace. */
export const ReadGauge = ({ reading: { read, table, mends, mend } }: { reading: Reading }) => {
  const say = useWords();
  const { gauge: old } = useGarment().record.pattern;
  const all = wholeGauges(table);
  const main = mainGauge(table, mends);
  if (main === null)
    return (
      table.gauges.length > 0 && (
        <Notice tone="unsure">
          The stitches of the {say('gauge')} are missing, so it is not taken over.
        </Notice>
      )
    );
  const was = old && printGauge(old);
  return (
    <>
      {all.length === 1 ? (
        <p>
          <b>{say('Gauge')}:</b> {inWords(main)}
        </p>
      ) : (
        <ChoiceChips
          label={`Which is the main ${say('gauge')}?`}
          value={`${all.indexOf(main)}`}
          onChange={(at) => mend({ gauge: Number(at) })}
          choices={all.map((each, at) => ({ value: `${at}`, label: inWords(each) }))}
        />
      )}
      {gaugesLeftOut(read, table, mends).map((line) => (
        <Notice key={line} tone="unsure">
          <q>{line}</q> is not taken over: a pattern keeps one {say('gauge')}, of the stitch that
          most of it is in. A swatch in another stitch goes into the evidence.
        </Notice>
      ))}
      {was !== undefined && was !== printGauge(asGauge(main.stitches, main.rows)) && (
        <Notice tone="unsure">It takes the place of {was}, which the pattern has now.</Notice>
      )}
    </>
  );
};
