import type { CountReading } from '@dryflat/record';
import { ChoiceChips, useWords } from '../../kit/index.ts';

/** Whether the fabric lay at rest or was pulled while it was read. */
export const ReadChoice = ({
  value,
  onChange,
  readOnly,
}: {
  value: CountReading['read'];
  onChange: (read: CountReading['read']) => void;
  readOnly: boolean;
}) => {
  const word = useWords();
  return (
    <ChoiceChips
      label="While it was read, it"
      value={value}
      onChange={onChange}
      readOnly={readOnly}
      choices={[
        { value: 'flat', label: 'Lay at rest' },
        {
          value: 'stretched',
          label: 'Was pulled',
          note: `Not a ${word('gauge')}: taken as the widest the fabric can be`,
        },
      ]}
    />
  );
};
