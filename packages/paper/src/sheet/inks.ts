import type { Stroke } from './sheet.ts';

/** Everything must survive a grey printer and a copier: ink and three greys, told apart by line. */
export const INK = '#1a1a1a';
export const QUIET = '#595959';
export const FAINT = '#a6a6a6';
export const WASH = '#efefef';

export const hair: Stroke = { colour: FAINT, widthMm: 0.15 };
export const fine: Stroke = { colour: QUIET, widthMm: 0.2 };
export const firm: Stroke = { colour: INK, widthMm: 0.45 };
export const dashed: Stroke = { colour: INK, widthMm: 0.35, dash: [1.6, 1] };
export const dotted: Stroke = { colour: QUIET, widthMm: 0.2, dash: [0.5, 0.9] };
