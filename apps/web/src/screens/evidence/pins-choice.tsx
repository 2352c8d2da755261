import type { ReactNode } from 'react';
import { ChoiceChips } from '../../kit/index.ts';

/** How what is dry has dried; no answer is chosen for anybody, and it may stay open. */
export const PinsChoice = ({
  pinned,
  onChange,
  readOnly,
  hint,
}: {
  pinned: boolean | undefined;
  onChange: (pinned: boolean) => void;
  readOnly: boolean;
  hint?: ReactNode;
}) => (
  <ChoiceChips
    label="It dried"
    value={pinned === undefined ? null : pinned ? 'pins' : 'flat'}
    readOnly={readOnly}
    hint={hint}
    onChange={(how) => onChange(how === 'pins')}
    choices={[
      { value: 'flat', label: 'Laid flat' },
      { value: 'pins', label: 'On pins' },
    ]}
  />
);
