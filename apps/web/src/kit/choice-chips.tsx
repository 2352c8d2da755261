import type { ReactNode } from 'react';
import { FieldError, Label, Radio, RadioGroup, Text } from 'react-aria-components';
import './choice.css';
import './field.css';

export interface Choice<T extends string> {
  readonly value: T;
  readonly label: string;
  /** What choosing it means, in a sentence under the label. */
  readonly note?: ReactNode;
}

export interface ChoiceChipsProps<T extends string> {
  label: string;
  /** Null while nothing is chosen. */
  value: T | null;
  onChange: (value: T) => void;
  choices: readonly Choice<T>[];
  hint?: ReactNode;
  /** What is wrong with it, such as that nothing is chosen yet; null when nothing is. */
  fault?: ReactNode;
  readOnly?: boolean;
  labelUnseen?: boolean;
}

/** One of a few, all in sight. */
export const ChoiceChips = <T extends string>({
  label,
  value,
  onChange,
  choices,
  hint,
  fault,
  readOnly = false,
  labelUnseen = false,
}: ChoiceChipsProps<T>) => (
  <RadioGroup
    className="df-choice"
    value={value}
    onChange={(next) => onChange(next as T)}
    isReadOnly={readOnly}
    isInvalid={Boolean(fault)}
    validationBehavior="aria"
  >
    <Label className={labelUnseen ? 'df-unseen' : 'df-label'}>{label}</Label>
    {hint && (
      <Text slot="description" className="df-hint">
        {hint}
      </Text>
    )}
    <div className="df-chips" data-wide={choices.some((each) => each.note) || undefined}>
      {choices.map((each) => (
        <Radio key={each.value} value={each.value} className="df-chip">
          {each.label}
          {each.note && <span className="df-chip-note">{each.note}</span>}
        </Radio>
      ))}
    </div>
    <FieldError className="df-field-fault">{fault}</FieldError>
  </RadioGroup>
);
