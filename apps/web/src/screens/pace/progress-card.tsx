import { Card, SectionFaults } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { assumedOf } from '../result/assumed.ts';
import { ProgressFields } from '../result/progress-field.tsx';

/** How much of each piece is on the needles or done. */
export const ProgressCard = () => {
  const { record } = useGarment();
  return (
    <Card title="How much is knit">
      {assumedOf(record, 'progress').map((each) => (
        <p key={each} className="df-soft">
          {each}
        </p>
      ))}
      <ProgressFields />
      <SectionFaults prefix="progress" />
    </Card>
  );
};
