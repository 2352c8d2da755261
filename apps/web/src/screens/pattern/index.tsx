import { Card, Disclosure, SectionFaults } from '../../kit/index.ts';
import { useDraftText, useGarment } from '../../store/index.ts';
import { AboutCard, GaugeCard } from './about-card.tsx';
import { PasteBox } from './paste-card.tsx';
import { QuestionsCard } from './questions-card.tsx';
import { AddRow, TableCard } from './table-card.tsx';
import './pattern.css';

/** Asked in its own card, or shown where the number stands. */
const SHOWN_IN_PLACE = ['missing-span', 'landmark-without-direction', 'duplicate-size'];

/** The pattern: what it is, its gauge, its sizes, and what only the knitter can say of them. */
const PatternScreen = () => {
  const { record } = useGarment();
  const empty = record.pattern.measurements.length === 0;
  return (
    <>
      <AboutCard />
      {empty ? <FirstCard /> : <TableCard />}
      {!empty && <QuestionsCard />}
      {!empty && <MoreCard />}
      <GaugeCard />
      <SectionFaults prefix="pattern." except={SHOWN_IN_PLACE} />
    </>
  );
};
export default PatternScreen;

const FirstCard = () => (
  <Card title="Paste its sizes">
    <PasteBox />
    <AddRow />
  </Card>
);

/** Stays open while there is text in the box. */
const MoreCard = () => {
  const { readOnly } = useGarment();
  const [text] = useDraftText('pattern/paste');
  if (readOnly) return null;
  return (
    <Card>
      <Disclosure title="Paste more lines of the pattern" level={2} startsOpen={text !== null}>
        <PasteBox />
      </Disclosure>
    </Card>
  );
};
