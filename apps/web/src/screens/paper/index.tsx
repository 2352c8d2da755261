import { outlinePieces } from '@dryflat/engine/garment';
import { goingOut } from '@dryflat/record';
import { useMemo } from 'react';
import { Card, ChoiceChips, Select } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useSaveFile } from '../../shell/save-file.ts';
import { useGarment, useView } from '../../store/index.ts';
import type { PaperQuestion, Printed } from '../../worker/paper/index.ts';
import { withoutPictures } from '../../worker/without-pictures.ts';
import { BrokenForecast } from '../forecast/not-yet.tsx';
import { useMatChoices } from '../mat/mat-choices.ts';
import { MendList } from '../result/mend-list.tsx';
import { PagesCard } from './pages-card.tsx';
import './paper.css';
import { usePaperChoices } from './paper-choices.ts';
import { usePaper } from './use-paper.ts';

const TITLES: Readonly<Record<Printed, string>> = {
  mat: 'The page for the mat',
  'full-size': 'Full-size outline',
  blank: 'Measuring sheet',
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
const ALL = 'all';

/** What goes to the mat on paper: looked at first, then saved or printed; made on this device. */
const Screen = () => {
  const { record } = useGarment();
  const { units, words } = useView();
  const [choices, choose] = usePaperChoices(record.id);
  const [{ gentle }, chooseMat] = useMatChoices(record.id);
  const { what, paper, piece } = choices;
  const names = useMemo(
    () => outlinePieces(record.kind, {}).map(({ name }) => name as string),
    [record.kind],
  );
  const one = what === 'full-size' && piece !== null && names.includes(piece) ? piece : null;
  const question = useMemo<PaperQuestion>(
    () => ({ record: withoutPictures(record), what, paper, units, words, gentle, piece: one }),
    [record, what, paper, units, words, gentle, one],
  );
  const out = goingOut(record);
  const fileName = `${out.fileName}-${what}`;
  const saveFile = useSaveFile();
  const now = usePaper(question, (bytes) =>
    saveFile(`${fileName}.pdf`, bytes as Uint8Array<ArrayBuffer>, 'application/pdf'),
  );
  return (
    <>
      <Card title="What to print">
        <ChoiceChips
          label="Pages"
          labelUnseen
          value={what}
          onChange={(next) => choose({ what: next })}
          choices={[
            {
              value: 'mat',
              label: TITLES.mat,
              note: 'Wanted and forecast lengths, and the pins of each piece in order',
            },
            {
              value: 'full-size',
              label: TITLES['full-size'],
              note: 'Tiles to tape together and lie under the wet piece',
            },
            {
              value: 'blank',
              label: TITLES.blank,
              note: 'No number on it, to fill in by pencil',
            },
          ]}
        />
        <div className="df-columns">
          <ChoiceChips
            label="Paper"
            value={paper}
            onChange={(next) => choose({ paper: next })}
            choices={[
              { value: 'a4', label: 'A4' },
              { value: 'letter', label: 'Letter' },
            ]}
          />
          {what !== 'blank' && (
            <ChoiceChips
              label="How far to pull"
              value={gentle ? 'gently' : 'to measure'}
              onChange={(value) => chooseMat({ gentle: value === 'gently' })}
              choices={[
                { value: 'gently', label: 'Gently' },
                { value: 'to measure', label: 'To the measurements' },
              ]}
            />
          )}
          {what === 'full-size' && names.length > 1 && (
            <Select
              label="Which piece"
              value={one ?? ALL}
              onChange={(value) => choose({ piece: value === ALL ? null : value })}
              options={[
                { value: ALL, label: 'All pieces' },
                ...names.map((name) => ({ value: name, label: capital(name) })),
              ]}
            />
          )}
        </div>
        <p className="df-soft">
          In {units === 'cm' ? 'centimetres' : 'inches'}, as everything is shown. The report has{' '}
          <a href={garmentHash(record.id, 'report')}>a place of its own</a>, and says whether
          persons are named: on these pages the garment is called “{out.name}”.
        </p>
      </Card>
      {now.broken !== null && <BrokenForecast message={now.broken} />}
      {now.faults.length > 0 && (
        <Card title="Not to be printed yet">
          <MendList id={record.id} faults={now.faults} />
        </Card>
      )}
      {now.pages === null && now.broken === null && now.faults.length === 0 && (
        <Making done={now.done} />
      )}
      {now.pages && (
        <PagesCard
          title={TITLES[what]}
          pages={now.pages}
          paper={paper}
          fileName={fileName}
          pending={now.pending}
          writing={now.writing}
          onPdf={now.writePdf}
          toScale={what === 'full-size'}
        />
      )}
    </>
  );
};
export default Screen;

const Making = ({ done }: { done: number | null }) => (
  <div className="pa-making">
    <p role="status">Making the pages…</p>
    {done !== null && (
      <progress value={done} max={1} aria-label="Plan of the mat, for the pages">
        {Math.round(100 * done)} %
      </progress>
    )}
  </div>
);
