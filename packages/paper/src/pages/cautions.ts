import type { Forecast } from '@dryflat/engine/garment';
import type { Block } from '../flow/block.ts';
import { note } from '../flow/note.ts';

const PINS =
  'Pins and wires are sharp, and those that rust stain for good. Count them in and count them out, keep children and pets away, and feel by hand for forgotten ones before anybody wears it.';

/** What must be seen where the work is done: pins, and what this yarn asks for. */
export const matCautions = (
  { notices }: Pick<Forecast, 'notices'>,
  sentence: (text: string) => string,
): Block =>
  note('Take care', [
    PINS,
    notices
      .filter(({ code }) => code.startsWith('caution-') && code !== 'caution-pins')
      .map(({ text }) => sentence(text))
      .join(' '),
  ]);
