import { goingOut } from '@dryflat/record';
import { Card, FieldGroup } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { WHEN_WORDS } from '../photos/photo-words.ts';
import { useReport } from './use-report.ts';

/** What goes in by choice: the wearer's body and name, and photos. Nothing of it until it is ticked. */
export const GoesInCard = () => {
  const { record, readOnly } = useGarment();
  const [report, edit] = useReport();
  const { name } = goingOut(record);
  const photos = record.photos ?? [];
  const choose = (id: string, on: boolean): void =>
    edit((draft) => {
      const others = draft.photos.filter((each) => each !== id);
      draft.photos = on ? [...others, id] : others;
    });
  return (
    <Card title="What else goes in">
      <label className="rp-tick">
        <input
          type="checkbox"
          checked={report.body}
          disabled={readOnly}
          onChange={(event) => {
            const { checked } = event.target;
            edit((draft) => {
              draft.body = checked;
            });
          }}
        />
        <span>
          Body measurements and names of persons
          <span className="df-hint">
            {report.body
              ? `They are in: whoever reads the report reads them. The garment is called “${name}” there, on pages to print, in calendars and in names of files.`
              : `They are left out, names in your own words too. The garment’s own name may be somebody’s: the report, pages to print, calendars and names of files call it “${name}”.`}
          </span>
        </span>
      </label>
      {photos.length === 0 ? (
        <p className="df-soft">There are no photos to choose from yet.</p>
      ) : (
        <FieldGroup legend="Photos">
          <div className="rp-photos">
            {photos.map(({ id, type, data, caption, when, widthPx, heightPx }) => (
              <label className="rp-tick rp-photo" key={id}>
                <img src={`data:${type};base64,${data}`} width={widthPx} height={heightPx} alt="" />
                <span className="rp-caption">
                  <input
                    type="checkbox"
                    checked={report.photos.includes(id)}
                    disabled={readOnly}
                    onChange={(event) => choose(id, event.target.checked)}
                  />
                  {caption || `${WHEN_WORDS[when]}, without a caption`}
                </span>
              </label>
            ))}
          </div>
        </FieldGroup>
      )}
    </Card>
  );
};
