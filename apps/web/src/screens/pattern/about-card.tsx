import { GARMENT_KINDS } from '@dryflat/engine/garment';
import { STITCHES } from '@dryflat/engine/textile';
import { countAcross } from '@dryflat/engine/units';
import {
  Card,
  ChoiceChips,
  CountField,
  formatCount,
  kindName,
  NeedleField,
  ParsedField,
  SectionFaults,
  Select,
  TextField,
  useWords,
} from '../../kit/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import { printGauge, readGauge } from './gauge-text.ts';
import { stitchName } from './stitch-names.ts';

/** What it is, and what the pattern calls itself. */
export const AboutCard = () => {
  const { record, change, readOnly } = useGarment();
  const { words } = useView();
  return (
    <Card title="The pattern">
      <div className="df-columns">
        <TextField
          label="Name of the pattern"
          value={record.pattern.name}
          onChange={(name) =>
            change((draft) => {
              draft.pattern.name = name;
            })
          }
          readOnly={readOnly}
        />
        <Select
          label="It makes a"
          value={record.kind}
          onChange={(kind) =>
            change((draft) => {
              draft.kind = kind;
            })
          }
          options={GARMENT_KINDS.map((kind) => ({ value: kind, label: kindName(kind, words) }))}
          readOnly={readOnly}
        />
        <Select
          label="Mostly knit in"
          value={record.stitch}
          onChange={(stitch) =>
            change((draft) => {
              draft.stitch = stitch;
            })
          }
          options={STITCHES.map((each) => ({ value: each, label: stitchName(each, words) }))}
          readOnly={readOnly}
        />
      </div>
    </Card>
  );
};

/** The gauge and needle that the pattern was written for. */
export const GaugeCard = () => {
  const { record, change, readOnly } = useGarment();
  const say = useWords();
  const { gauge, needleMm } = record.pattern;
  return (
    <Card title={`Its ${say('gauge')}`}>
      <div className="df-columns">
        <ParsedField<string>
          label={`${say('Gauge')}, as the pattern gives it`}
          path="pattern/gauge"
          keys="text"
          hint={<GaugeHint />}
          value={gauge ? printGauge(gauge) : null}
          print={(text) => text}
          parse={(text) => {
            const read = readGauge(text, say('gauge'));
            return read.ok ? { ok: true, value: printGauge(read.value) } : read;
          }}
          onCommit={(text) =>
            change((draft) => {
              const read = text === null ? null : readGauge(text, '');
              if (read?.ok)
                draft.pattern.gauge = {
                  ...read.value,
                  state: draft.pattern.gauge?.state ?? 'dried',
                };
              else delete draft.pattern.gauge;
            })
          }
        />
        <NeedleField
          label="Needle of the pattern"
          path="pattern/needleMm"
          valueMm={needleMm}
          onCommit={(mm) =>
            change((draft) => {
              if (mm === null) delete draft.pattern.needleMm;
              else draft.pattern.needleMm = mm;
            })
          }
        />
      </div>
      {gauge && (
        <ChoiceChips
          label="That was counted"
          value={gauge.state}
          onChange={(state) =>
            change((draft) => {
              if (draft.pattern.gauge) draft.pattern.gauge.state = state;
            })
          }
          choices={[
            { value: 'dried', label: 'Washed and dried, as nearly always' },
            { value: 'asKnit', label: 'Before any wash' },
          ]}
          readOnly={readOnly}
        />
      )}
      <RepeatFields />
      <SectionFaults prefix="pattern.gauge" />
      <SectionFaults prefix="pattern.needleMm" />
    </Card>
  );
};

/** Stitches after which the stitch pattern begins again, and those beside the repeats. */
const RepeatFields = () => {
  const { record, change } = useGarment();
  const { repeat } = record.pattern;
  const set =
    (key: 'stitches' | 'plus' | 'rows') =>
    (value: number | null): void =>
      change((draft) => {
        const now = draft.pattern.repeat ?? { stitches: 1, plus: 0 };
        if (value !== null) now[key] = value;
        else if (key === 'rows') delete now.rows;
        else now[key] = key === 'plus' ? 0 : 1;
        if (now.stitches === 1 && now.plus === 0 && now.rows === undefined)
          delete draft.pattern.repeat;
        else draft.pattern.repeat = now;
      });
  const field = (key: 'stitches' | 'plus' | 'rows', label: string) => (
    <CountField
      label={label}
      path={`pattern/repeat/${key}`}
      value={repeat?.[key] || null}
      whole
      onCommit={set(key)}
    />
  );
  return (
    <div className="df-three">
      {field('stitches', 'The stitch pattern repeats over, stitches')}
      {field('plus', 'Plus at the edges, stitches')}
      {field('rows', 'And repeats over, rows')}
    </div>
  );
};

/** The same gauge over the length that is usual in the unit shown; an example while there is none. */
const GaugeHint = () => {
  const { gauge } = useGarment().record.pattern;
  const { units } = useView();
  if (!gauge) return 'Such as 20 sts and 28 rows = 4 in.';
  const over = units === 'cm' ? 100 : 101.6;
  const at = (count: number): string =>
    formatCount(Math.round(countAcross(count, gauge.overMm, over) * 10) / 10);
  const rows = gauge.rows === undefined ? '' : ` and ${at(gauge.rows)} rows`;
  const none =
    gauge.rows === undefined
      ? ' The pattern gives no rows: those of plain knit are taken, and lengths are less sure.'
      : '';
  return `That is ${at(gauge.stitches)} stitches${rows} over ${units === 'cm' ? '10 cm' : '4 in'}.${none}`;
};
