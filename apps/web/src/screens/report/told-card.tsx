import { Card, CountField, MassField, SectionFaults, TextField } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { useReport } from './use-report.ts';

/** What only the knitter can tell: changes, fit, yarn and time. */
export const ToldCard = () => {
  const { readOnly } = useGarment();
  const [report, edit] = useReport();
  return (
    <Card title="What only you can tell">
      <TextField
        long
        label="Changes made"
        hint="What was knit otherwise than the pattern says"
        value={report.changes}
        readOnly={readOnly}
        onChange={(text) =>
          edit((draft) => {
            draft.changes = text;
          })
        }
      />
      <TextField
        long
        label="Notes on the fit"
        value={report.fitNotes}
        readOnly={readOnly}
        onChange={(text) =>
          edit((draft) => {
            draft.fitNotes = text;
          })
        }
      />
      <div className="df-columns">
        <MassField
          label="Yarn used"
          path="report/usedG"
          hint="Left empty: what was bought less what is left"
          valueG={report.usedG}
          onCommit={(grams) =>
            edit((draft) => {
              if (grams === null) delete draft.usedG;
              else draft.usedG = grams;
            })
          }
        />
        <CountField
          label="Hours"
          path="report/hours"
          hint="Left empty: what the log under Pace adds up to"
          value={report.hours}
          onCommit={(hours) =>
            edit((draft) => {
              if (hours === null) delete draft.hours;
              else draft.hours = hours;
            })
          }
        />
      </div>
      <SectionFaults prefix="report" />
    </Card>
  );
};
