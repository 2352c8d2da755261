/** Marks of emphasis; all of them give the text back as it is where colours are off. */
export interface Style {
  readonly heading: (text: string) => string;
  readonly strong: (text: string) => string;
  readonly quiet: (text: string) => string;
  readonly warning: (text: string) => string;
}

const escaped = (on: number, off: number) => (text: string) => `\u001b[${on}m${text}\u001b[${off}m`;
const asIs = (text: string) => text;

/** Weights and one hue of the terminal's own palette, so that light and dark screens both read. */
export const styleFor = (colours: boolean): Style =>
  colours
    ? {
        heading: escaped(4, 24),
        strong: escaped(1, 22),
        quiet: escaped(2, 22),
        warning: escaped(33, 39),
      }
    : { heading: asIs, strong: asIs, quiet: asIs, warning: asIs };

/**
 * Whether to show colours: only on a terminal that can, and never where NO_COLOR is set to anything
 * (https://no-color.org).
 */
export const wantsColours = (
  isTerminal: boolean,
  environment: Readonly<Record<string, string | undefined>>,
): boolean => isTerminal && !environment.NO_COLOR && environment.TERM !== 'dumb';
