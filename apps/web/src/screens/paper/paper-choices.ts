import type { PaperName } from '@dryflat/paper';
import { useCallback, useMemo } from 'react';
import { useDeviceNote, useView } from '../../store/index.ts';
import type { Printed } from '../../worker/paper/index.ts';

export interface PaperChoices {
  readonly what: Printed;
  readonly paper: PaperName;
  readonly piece: string | null;
}

const WHAT: readonly Printed[] = ['mat', 'full-size', 'blank'];

/** What was kept; anything that cannot be read is as usual: paper goes with the unit of length. */
export const readPaperChoices = (text: string | null, units: 'cm' | 'in'): PaperChoices => {
  const usual: PaperChoices = {
    what: 'mat',
    paper: units === 'in' ? 'letter' : 'a4',
    piece: null,
  };
  try {
    const { what, paper, piece } = JSON.parse(text ?? '{}') ?? {};
    return {
      what: WHAT.find((each) => each === what) ?? usual.what,
      paper: paper === 'a4' || paper === 'letter' ? paper : usual.paper,
      piece: typeof piece === 'string' ? piece : null,
    };
  } catch {
    return usual;
  }
};

/** What of a garment is printed, and on which paper: kept on this device. */
export const usePaperChoices = (
  garment: string,
): [PaperChoices, (part: Partial<PaperChoices>) => void] => {
  const { units } = useView();
  const [text, note] = useDeviceNote(`paper/${garment}`);
  const choices = useMemo(() => readPaperChoices(text, units), [text, units]);
  const change = useCallback(
    (part: Partial<PaperChoices>) => {
      const before = text === null ? {} : readPaperChoices(text, units);
      note(JSON.stringify({ ...before, ...part }));
    },
    [text, units, note],
  );
  return [choices, change];
};
