import type { CSSProperties } from 'react';
import type { LabelText } from './label-size.ts';

interface Props {
  readonly text: LabelText;
  /** Its name to a screen reader: every number in words. */
  readonly sentence: string;
  /** Letter that stands for it on the drawing, where the labels are listed; null where they are on it. */
  readonly letter: string | null;
  readonly place: CSSProperties;
  readonly picked: boolean;
  readonly onPick: () => void;
}

/** A dimension's number as a button. */
export const DimensionLabel = ({ text, sentence, letter, place, picked, onPick }: Props) => (
  <li>
    <button type="button" className="df-dim" style={place} aria-pressed={picked} onClick={onPick}>
      <span className="df-dim-said">{sentence}</span>
      <span className="df-dim-shown" aria-hidden="true">
        <span className="df-dim-name">
          {letter !== null && <b className="df-dim-letter">{letter}</b>}
          {text.name}
        </span>
        <span className="df-dim-big">{text.big}</span>
        {text.wanted !== null && <span className="df-dim-wanted">{text.wanted}</span>}
      </span>
    </button>
  </li>
);
