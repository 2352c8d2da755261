import { useEffect, useRef, useState } from 'react';
import { Card, Disclosure } from '../../kit/index.ts';
import { useDraftText, useGarment } from '../../store/index.ts';
import { AboutCard, GaugeCard } from './about-card.tsx';
import { PasteBox } from './paste-card.tsx';
import { AddRow, TableCard } from './table-card.tsx';
import './pattern.css';

/** The pattern: its sizes and what only the knitter can say of them, what it is, its gauge. */
const PatternScreen = () => {
  const { record } = useGarment();
  const [taken, setTaken] = useState(0);
  const table = useArrival(taken);
  const onTaken = (): void => setTaken(taken + 1);
  const empty = record.pattern.measurements.length === 0;
  return (
    <>
      <div ref={table} tabIndex={-1}>
        {empty ? <FirstCard onTaken={onTaken} /> : <TableCard />}
      </div>
      {!empty && <MoreCard onTaken={onTaken} />}
      <AboutCard />
      <GaugeCard />
    </>
  );
};
export default PatternScreen;

/** Brings the knitter to the table each time that something was taken over into it. */
const useArrival = (taken: number) => {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (taken === 0) return;
    place.current?.focus({ preventScroll: true });
    place.current?.scrollIntoView({ block: 'start' });
  }, [taken]);
  return place;
};

const FirstCard = ({ onTaken }: { onTaken: () => void }) => (
  <Card title="Paste its sizes">
    <PasteBox onTaken={onTaken} />
    <AddRow />
  </Card>
);

/** Open while there is text in the box. */
const MoreCard = ({ onTaken }: { onTaken: () => void }) => {
  const { readOnly } = useGarment();
  const [text] = useDraftText('pattern/paste');
  if (readOnly) return null;
  return (
    <Card>
      <Disclosure title="Paste more lines of the pattern" level={2} startsOpen={text !== null}>
        <PasteBox onTaken={onTaken} />
      </Disclosure>
    </Card>
  );
};
