import { type ReactNode, useId } from 'react';
import './field.css';
import { Icon } from './icons.tsx';

export interface SelectGroup<T extends string> {
  readonly label: string;
  readonly options: readonly SelectOption<T>[];
}
export interface SelectOption<T extends string> {
  readonly value: T;
  readonly label: string;
}

export interface SelectProps<T extends string> {
  label: string;
  value: T | null;
  onChange: (value: T) => void;
  options: readonly (SelectOption<T> | SelectGroup<T>)[];
  /** Shown while nothing is chosen. */
  placeholder?: string;
  hint?: ReactNode;
  readOnly?: boolean;
  labelUnseen?: boolean;
}

/** One of many: the device's own picker, which every phone and screen reader knows. */
export const Select = <T extends string>({
  label,
  value,
  onChange,
  options,
  placeholder = 'Choose…',
  hint,
  readOnly = false,
  labelUnseen = false,
}: SelectProps<T>) => {
  const id = useId();
  return (
    <div className="df-field">
      <label className={labelUnseen ? 'df-unseen' : 'df-label'} htmlFor={id}>
        {label}
      </label>
      {hint && (
        <span className="df-hint" id={`${id}-hint`}>
          {hint}
        </span>
      )}
      <span className="df-box">
        <select
          id={id}
          value={value ?? ''}
          disabled={readOnly}
          aria-describedby={hint ? `${id}-hint` : undefined}
          onChange={(event) => onChange(event.target.value as T)}
        >
          {value === null && (
            <option value="" disabled>
              {placeholder}
            </option>
          )}
          {options.map((each) =>
            'options' in each ? (
              <optgroup key={each.label} label={each.label}>
                {each.options.map(option)}
              </optgroup>
            ) : (
              option(each)
            ),
          )}
        </select>
        <span className="df-select-mark">
          <Icon name="down" />
        </span>
      </span>
    </div>
  );
};

const option = <T extends string>({ value, label }: SelectOption<T>) => (
  <option key={value} value={value}>
    {label}
  </option>
);
