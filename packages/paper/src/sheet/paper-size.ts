/** ISO 216 A4, and ANSI/ASME Y14.1 A (Letter, 8½ × 11 in); millimetres. */
export const PAPERS = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
} as const;

export type PaperName = keyof typeof PAPERS;

/**
 * Nothing is drawn nearer to an edge than this. Common practice, no source: desk printers leave 3 to
 * 6 mm of a sheet blank.
 */
export const PRINTER_MARGIN = 8;
