/** The engine's problems begin small and end open, so that they fit into a line: here they stand alone. */
export const asSentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? '' : '.'}`;
