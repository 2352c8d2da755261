import { findLandmark } from '@dryflat/engine/garment';
import { awaitsSpan, type PatternMeasurement, questionsOf } from '@dryflat/record';
import { ChoiceChips, Notice, SpanChoice, useLengths } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { rowOf } from './change-pattern.ts';

/** Whether only the knitter can say something of the row: flat or around, or which way it runs. */
export const isAsked = (row: PatternMeasurement): boolean => isUnaimed(row) || awaitsSpan(row);

const isUnaimed = ({ landmark, direction }: PatternMeasurement): boolean =>
  findLandmark(landmark) === null && direction === undefined;

/** Asks beside the row what only the knitter can say, and what each answer would mean. */
export const RowQuestion = ({ row }: { row: PatternMeasurement }) =>
  isAsked(row) && (
    <div className="pt-question">
      {isUnaimed(row) && <WhichWay row={row} />}
      {awaitsSpan(row) && <FlatOrAround row={row} />}
    </div>
  );

const WhichWay = ({ row }: { row: PatternMeasurement }) => {
  const { change, readOnly } = useGarment();
  return (
    <ChoiceChips
      label={`${row.name || 'This place'}: which way does it run?`}
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
  );
};

const FlatOrAround = ({ row }: { row: PatternMeasurement }) => {
  const { record, change } = useGarment();
  const { length, sentence } = useLengths();
  const at = record.pattern.measurements.findIndex(({ id }) => id === row.id);
  const question = questionsOf(record).find(
    ({ field }) => field === `pattern.measurements[${at}].span`,
  );
  if (!question) return null;
  const ofSize =
    question.size === null || record.pattern.sizes.length === 1 ? '' : `size ${question.size}, `;
  return (
    <SpanChoice
      label={`${row.name || 'This width'}, ${ofSize}${length(question.valueMm)}: how is it measured?`}
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
  );
};

/** Says above a long table that some of its rows wait for an answer. */
export const QuestionsAhead = () => {
  const asked = useGarment().record.pattern.measurements.filter(isAsked);
  if (asked.length < 2) return null;
  return (
    <Notice tone="unsure">
      {asked.length} measurements wait for an answer that only you can give:{' '}
      {asked.map(({ name, landmark }) => name || landmark).join(', ')}. Each is asked below, beside
      its number.
    </Notice>
  );
};
