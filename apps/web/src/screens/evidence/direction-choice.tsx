import type { Reading } from '@dryflat/record';
import { ChoiceChips } from '../../kit/index.ts';

export const DirectionChoice = ({
  value,
  onChange,
  readOnly,
}: {
  value: Reading['direction'];
  onChange: (direction: Reading['direction']) => void;
  readOnly: boolean;
}) => (
  <ChoiceChips
    label="Along"
    value={value}
    onChange={onChange}
    readOnly={readOnly}
    choices={[
      { value: 'width', label: 'The stitches, across' },
      { value: 'length', label: 'The rows, up' },
    ]}
  />
);
