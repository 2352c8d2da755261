import { useId } from 'react';
import { useGarment } from '../../store/index.ts';
import { fromTimeInput, toTimeInput } from './time-input.ts';

/** A day and a time, by the device's own picker. What is half filled is not told. */
export const TimeField = ({
  label,
  ms,
  onChange,
}: {
  label: string;
  ms: number;
  onChange: (ms: number) => void;
}) => {
  const id = useId();
  const { readOnly } = useGarment();
  return (
    <div className="df-field">
      <label className="df-label" htmlFor={id}>
        {label}
      </label>
      <span className="df-box">
        <input
          id={id}
          type="datetime-local"
          key={ms}
          defaultValue={toTimeInput(ms)}
          max={toTimeInput(Date.now())}
          readOnly={readOnly}
          onBlur={({ currentTarget }) => {
            const read = fromTimeInput(currentTarget.value);
            if (read === null) currentTarget.value = toTimeInput(ms);
            else if (currentTarget.value !== toTimeInput(ms)) onChange(Math.min(read, Date.now()));
          }}
        />
      </span>
    </div>
  );
};
