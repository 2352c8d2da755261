import type { MatWork } from '@dryflat/record';
import { useState } from 'react';
import { Button, type Choice, ChoiceChips, Dialog, TextField } from '../../kit/index.ts';
import { workName } from './work-name.ts';

export interface CopyChoice {
  readonly copy: string;
  /** From the plan as it stands now, or from what was laid before: the same way round or mirrored. */
  readonly as: 'plan' | 'same' | 'mirror';
  readonly before?: MatWork;
}

/** Another copy of a piece: its name, and whether it lies like the one before. */
export const CopySheet = ({
  alike,
  piece,
  begin,
  onClose,
}: {
  alike: readonly MatWork[];
  piece: string;
  begin: (choice: CopyChoice) => void;
  onClose: () => void;
}) => {
  const before = alike.at(-1);
  const [copy, setCopy] = useState('');
  const [as, setAs] = useState<CopyChoice['as']>('mirror');
  const name = before ? workName(before) : '';
  const choices: Choice<CopyChoice['as']>[] = [
    { value: 'mirror', label: 'Mirror', note: `As ${name} was laid, left and right exchanged` },
    { value: 'same', label: 'The same', note: `As ${name} was laid, the same way round` },
    { value: 'plan', label: 'A plan of its own', note: 'As the plan stands on the mat now' },
  ];
  return (
    <Dialog
      title={`Another ${piece}`}
      onClose={onClose}
      foot={
        <>
          <Button onPress={onClose}>Not now</Button>
          <Button
            look="main"
            onPress={() => begin({ copy: copy.trim(), as, ...(before && { before }) })}
          >
            Start pinning
          </Button>
        </>
      }
    >
      <TextField label="Which one is it? Left, right, second…" value={copy} onChange={setCopy} />
      <ChoiceChips label="How it is laid" value={as} onChange={setAs} choices={choices} />
    </Dialog>
  );
};
