import { findLandmark } from '@dryflat/engine/garment';
import { questionsOf } from '@dryflat/record';
import { useMemo } from 'react';
import { Card, ChoiceChips, SpanChoice, useLengths } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { rowOf } from './change-pattern.ts';

const ROW = /^pattern\.measurements\[(\d+)\]\.span$/;

/** What only the knitter can say of the pattern's numbers: flat or around, and which way a place runs. */
export const QuestionsCard = () => {
  const { record, change, readOnly } = useGarment();
  const { length, sentence } = useLengths();
  const { measurements } = record.pattern;
  const spans = useMemo(
    () =>
      questionsOf(record).flatMap((question) => {
        const row = measurements[Number(ROW.exec(question.field)?.[1] ?? -1)];
        return row ? [{ row, question }] : [];
      }),
    [record, measurements],
  );
  const unaimed = measurements.filter(
    ({ landmark, direction }) => findLandmark(landmark) === null && direction === undefined,
  );
  if (spans.length + unaimed.length === 0) return null;
  return (
    <Card title="Only you can say">
      {unaimed.map((row) => (
        <ChoiceChips
          key={row.id}
          label={`${row.name || 'A place of your own'}: which way does it run?`}
          value={null}
          onChange={(direction) =>
            change((draft) => {
              rowOf(draft, row.id).direction = direction;
            })
          }
          choices={[
            { value: 'width', label: 'Along a row', note: 'Its stitches set it.' },
            { value: 'length', label: 'Up the rows', note: 'Its rows set it.' },
          ]}
          readOnly={readOnly}
        />
      ))}
      {spans.map(({ row, question }) => (
        <SpanChoice
          key={row.id}
          label={`${question.name || 'This width'}, ${length(question.valueMm)}: how is it measured?`}
          value={null}
          onChange={(span) =>
            change((draft) => {
              rowOf(draft, row.id).span = span;
            })
          }
          flatMeans={sentence(question.flat.sentence)}
          aroundMeans={sentence(question.around.sentence)}
          hint={sentence(question.why)}
        />
      ))}
    </Card>
  );
};
