import type { ReactNode } from 'react';
import { useGarment } from '../store/index.ts';
import { ChoiceChips } from './choice-chips.tsx';

export interface SpanChoiceProps {
  /** What is asked about: `Chest: how is it measured?` */
  label: string;
  /** Null or undefined while it is not answered; it is never guessed. */
  value: 'flat' | 'around' | null | undefined;
  onChange: (value: 'flat' | 'around') => void;
  /** What each answer would mean for this body, a sentence each. */
  flatMeans?: ReactNode;
  aroundMeans?: ReactNode;
  hint?: ReactNode;
}

/** Asks whether a width is across one layer laid flat or all the way around. */
export const SpanChoice = ({
  label,
  value,
  onChange,
  flatMeans,
  aroundMeans,
  hint,
}: SpanChoiceProps) => {
  const { readOnly } = useGarment();
  return (
    <ChoiceChips
      label={label}
      value={value ?? null}
      onChange={onChange}
      hint={hint}
      readOnly={readOnly}
      choices={[
        { value: 'flat', label: 'Flat, across one layer', note: flatMeans },
        { value: 'around', label: 'All the way around', note: aroundMeans },
      ]}
    />
  );
};
