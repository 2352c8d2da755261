import type { ReactNode } from 'react';
import { TextField as AriaTextField, FieldError, Input, Label, Text } from 'react-aria-components';
import { useGarment } from '../store/index.ts';
import { asSentence } from './as-sentence.ts';
import './field.css';
import { type ParsedText, useParsedText } from './use-parsed-text.ts';

export interface ParsedFieldProps<T> extends ParsedText<T> {
  label: string;
  hint?: ReactNode;
  /** The unit that a bare number is taken in: shown behind the number, spoken with the label. */
  unit?: { readonly sign: string; readonly spoken: string };
  /** Hides the label from sight where a table's heading says it. */
  labelUnseen?: boolean;
  /** Keyboard of a phone: digits unless the field takes words. */
  keys?: 'decimal' | 'text';
}

/** A text field over a parser of our own; never a number input, which loses commas and fractions. */
export const ParsedField = <T,>({
  label,
  hint,
  unit,
  labelUnseen = false,
  keys = 'decimal',
  ...field
}: ParsedFieldProps<T>) => {
  const { readOnly } = useGarment();
  const { text, fault, onChange, onFocus, onBlur } = useParsedText(field);
  return (
    <AriaTextField
      className="df-field"
      type="text"
      inputMode={keys}
      autoComplete="off"
      spellCheck="false"
      value={text}
      onChange={onChange}
      onFocus={onFocus}
      onBlur={onBlur}
      isInvalid={fault !== null}
      isReadOnly={readOnly}
      validationBehavior="aria"
    >
      <Label className={labelUnseen ? 'df-unseen' : 'df-label'}>
        {label}
        {unit && <span className="df-unseen">, {unit.spoken}</span>}
      </Label>
      {hint && (
        <Text slot="description" className="df-hint">
          {hint}
        </Text>
      )}
      <span className="df-box" data-numeric={keys === 'decimal' || undefined}>
        <Input onFocus={(event) => event.currentTarget.select()} />
        {unit && (
          <span className="df-unit" aria-hidden="true">
            {unit.sign}
          </span>
        )}
      </span>
      <FieldError className="df-field-fault">
        {fault && (
          <>
            <b>{asSentence(fault.problem)}</b> {fault.mend}
          </>
        )}
      </FieldError>
    </AriaTextField>
  );
};
