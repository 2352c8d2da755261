import { useId } from 'react';
import { useGarment } from '../../store/index.ts';

/** A day, by the device's own calendar; null when emptied. */
export const DayField = ({
  label,
  value,
  onChange,
}: {
  label: string;
  value: string | undefined;
  onChange: (day: string | null) => void;
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
          type="date"
          value={value ?? ''}
          readOnly={readOnly}
          onChange={(event) => onChange(event.target.value === '' ? null : event.target.value)}
        />
      </span>
    </div>
  );
};
