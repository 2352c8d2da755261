import type { Block } from '../flow/block.ts';
import { note } from '../flow/note.ts';

const PINS =
  'Pins and wires are sharp. Count them in and count them out, keep children and pets away, and feel by hand for forgotten ones before anybody wears it.';
const HEAT = 'Steam and irons burn. Heat ruins acrylic for good.';
const FELT = 'Untreated wool felts when it is rubbed or goes from warm to cold at once.';

/** What must be seen where the work is done. */
export const matCautions = (): Block => note('Take care', [PINS, `${HEAT} ${FELT}`]);
