import { useCallback, useMemo } from 'react';
import { useDeviceNote } from '../../store/index.ts';
import type { MatChoices } from '../../worker/mat/index.ts';

export const USUAL_CHOICES: MatChoices = { piece: null, gentle: true };

/** What was kept; anything that cannot be read is as usual. */
export const readChoices = (text: string | null): MatChoices => {
  try {
    const { piece, gentle } = JSON.parse(text ?? '{}') ?? {};
    return {
      piece: typeof piece === 'string' ? piece : USUAL_CHOICES.piece,
      gentle: typeof gentle === 'boolean' ? gentle : USUAL_CHOICES.gentle,
    };
  } catch {
    return USUAL_CHOICES;
  }
};

/** Which piece of a garment is on the mat, and how far it is pulled: kept on this device. */
export const useMatChoices = (
  garment: string,
): [MatChoices, (part: Partial<MatChoices>) => void] => {
  const [text, note] = useDeviceNote(`mat/${garment}`);
  const choices = useMemo(() => readChoices(text), [text]);
  const change = useCallback(
    (part: Partial<MatChoices>) => note(JSON.stringify({ ...choices, ...part })),
    [choices, note],
  );
  return [choices, change];
};
