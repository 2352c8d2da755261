import type { ReactNode } from 'react';
import {
  TextField as AriaTextField,
  FieldError,
  Input,
  Label,
  Text,
  TextArea,
} from 'react-aria-components';
import './field.css';

export interface TextFieldProps {
  label: string;
  value: string;
  onChange: (text: string) => void;
  hint?: ReactNode;
  /** What is wrong with it, shown in place; null when nothing is. */
  fault?: ReactNode;
  /** Several lines. */
  long?: boolean;
  maxLength?: number;
  readOnly?: boolean;
  autoFocus?: boolean;
}

/** A field of words. */
export const TextField = ({
  label,
  value,
  onChange,
  hint,
  fault,
  long = false,
  maxLength = long ? 4000 : 200,
  readOnly = false,
  autoFocus = false,
}: TextFieldProps) => (
  <AriaTextField
    className="df-field"
    value={value}
    onChange={onChange}
    maxLength={maxLength}
    isReadOnly={readOnly}
    isInvalid={Boolean(fault)}
    autoFocus={autoFocus}
    autoComplete="off"
  >
    <Label className="df-label">{label}</Label>
    {hint && (
      <Text slot="description" className="df-hint">
        {hint}
      </Text>
    )}
    <span className="df-box">{long ? <TextArea rows={4} /> : <Input />}</span>
    <FieldError className="df-field-fault">{fault}</FieldError>
  </AriaTextField>
);
