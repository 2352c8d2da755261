import { type Fault, toPlain } from '../../units/index.ts';
import type { TextMark, TextSpan, UnreadText } from './types.ts';

const shown = (text: string): string => (text.length > 60 ? `${text.slice(0, 60)}…` : text);

/** A fault about a piece of the pasted text. */
export const tableFault = (
  code: string,
  field: string,
  given: string,
  problem: string,
  mend: string,
): Fault => ({ code: `table-${code}`, field, given: shown(given.trim()), problem, mend });

const isBlank = (char: string): boolean => toPlain(char).plain.trim() === '';

/**
 * Keeps account of the text: what was taken for what, and what was refused. Whatever is neither and
 * not blank is unread by construction, so nothing is lost.
 */
export class Reading {
  readonly text: string;
  readonly #marks: TextMark[] = [];
  readonly #refused: UnreadText[] = [];

  constructor(text: string) {
    this.text = text;
  }

  mark(...marks: readonly TextMark[]): void {
    this.#marks.push(...marks.filter(({ from }) => from[1] > from[0]));
  }

  refuse(from: TextSpan, fault: Fault): void {
    this.#refused.push({ from, text: this.text.slice(...from), fault });
  }

  /** Marks and unread pieces in the order of the text, without overlap, covering all but blanks. */
  finish(): { marks: TextMark[]; unread: UnreadText[] } {
    const refused = [...this.#refused].sort((a, b) => a.from[0] - b.from[0]);
    const taken = new Uint8Array(this.text.length);
    for (const { from } of refused) taken.fill(1, ...from);
    const marks = this.#marks
      .sort((a, b) => a.from[0] - b.from[0])
      .filter(({ from }) => {
        if (taken.subarray(...from).includes(1)) return false;
        taken.fill(1, ...from);
        return true;
      });
    const left = this.#leftOver(taken);
    return { marks, unread: [...refused, ...left].sort((a, b) => a.from[0] - b.from[0]) };
  }

  /** Runs of text that nothing took, without the blanks around them. */
  #leftOver(taken: Uint8Array): UnreadText[] {
    const left: UnreadText[] = [];
    let start = -1;
    let end = -1;
    const close = () => {
      if (start >= 0) left.push(this.#notUnderstood([start, end]));
      start = -1;
    };
    for (let i = 0; i < this.text.length; i++) {
      if (taken[i] === 1 || this.text[i] === '\n') close();
      else if (!isBlank(this.text[i]!)) {
        if (start < 0) start = i;
        end = i + 1;
      }
    }
    close();
    return left;
  }

  #notUnderstood(from: TextSpan): UnreadText {
    const text = this.text.slice(...from);
    const fault = tableFault(
      'not-understood',
      'size table',
      text,
      'this piece was not understood',
      'Leave it out, or type what it stands for into its cell.',
    );
    return { from, text, fault };
  }
}
