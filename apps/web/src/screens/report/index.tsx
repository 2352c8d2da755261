import { type GarmentRecord, goingOut } from '@dryflat/record';
import { useMemo } from 'react';
import { Button, Card, ChoiceChips, toast } from '../../kit/index.ts';
import { useSaveFile, useTellHalfTyped } from '../../shell/save-file.ts';
import { useGarment, useView } from '../../store/index.ts';
import { useForecast } from '../../worker/index.ts';
import type { PaperQuestion } from '../../worker/paper/index.ts';
import { copyText } from '../counts/copy-text.ts';
import { BrokenForecast } from '../forecast/not-yet.tsx';
import { WhichSize } from '../forecast/which-size.tsx';
import { PagesCard } from '../paper/pages-card.tsx';
import '../paper/paper.css';
import { usePaperChoices } from '../paper/paper-choices.ts';
import { usePaper } from '../paper/use-paper.ts';
import { MendList } from '../result/mend-list.tsx';
import { GoesInCard } from './goes-in-card.tsx';
import './report.css';
import { ToldCard } from './told-card.tsx';

/** Without the photos that are not chosen: megabytes that the report does not show. */
const withChosen = (record: GarmentRecord): GarmentRecord => {
  const chosen = new Set(record.report?.photos ?? []);
  return { ...record, photos: (record.photos ?? []).filter(({ id }) => chosen.has(id)) };
};

/** One page for the designer or for oneself: written, looked at, saved. */
const Screen = () => {
  const { record } = useGarment();
  const { sizes } = useForecast();
  const { units, words } = useView();
  const [{ paper }, choose] = usePaperChoices(record.id);
  const question = useMemo<PaperQuestion>(
    () => ({
      record: withChosen(record),
      what: 'report',
      paper,
      units,
      words,
      gentle: true,
      piece: null,
    }),
    [record, paper, units, words],
  );
  const name = `${goingOut(record).fileName}-report`;
  const saveFile = useSaveFile();
  const tellHalfTyped = useTellHalfTyped();
  const now = usePaper(question, (bytes) =>
    saveFile(`${name}.pdf`, bytes as Uint8Array<ArrayBuffer>, 'application/pdf'),
  );
  const copy = async (text: string) => {
    const copied = await copyText(text);
    toast(copied ? 'The report is copied.' : 'This browser does not let it be copied.');
    if (copied) tellHalfTyped();
  };
  return (
    <>
      {sizes && <WhichSize each={sizes} />}
      <ToldCard />
      <GoesInCard />
      <div className="rp-paper">
        <ChoiceChips
          label="Paper"
          value={paper}
          onChange={(next) => choose({ paper: next })}
          choices={[
            { value: 'a4', label: 'A4' },
            { value: 'letter', label: 'Letter' },
          ]}
        />
      </div>
      {now.broken !== null && <BrokenForecast message={now.broken} />}
      {now.faults.length > 0 && (
        <Card title="No report yet">
          <MendList id={record.id} faults={now.faults} />
        </Card>
      )}
      {now.pages === null && now.broken === null && now.faults.length === 0 && (
        <p className="df-soft" role="status">
          Writing the report…
        </p>
      )}
      {now.pages && now.report && (
        <PagesCard
          title="The report"
          pages={now.pages}
          paper={paper}
          fileName={name}
          pending={now.pending}
          writing={now.writing}
          onPdf={now.writePdf}
          toScale={false}
          more={
            <MoreFiles
              html={now.report.html}
              markdown={now.report.markdown}
              name={name}
              pending={now.pending}
              onCopy={copy}
            />
          }
        />
      )}
    </>
  );
};
export default Screen;

const MoreFiles = ({
  html,
  markdown,
  name,
  pending,
  onCopy,
}: {
  html: string;
  markdown: string;
  name: string;
  pending: boolean;
  onCopy: (text: string) => void;
}) => {
  const saveFile = useSaveFile();
  return (
    <>
      <Button
        icon="fetch"
        isDisabled={pending}
        onPress={() => saveFile(`${name}.html`, html, 'text/html')}
      >
        Save as HTML
      </Button>
      <Button
        icon="fetch"
        isDisabled={pending}
        onPress={() => saveFile(`${name}.md`, markdown, 'text/markdown')}
      >
        Save as Markdown
      </Button>
      <Button icon="copy" isDisabled={pending} onPress={() => onCopy(markdown)}>
        Copy as text
      </Button>
    </>
  );
};
