import { parseMass } from '@dryflat/engine/units';
import { ParsedField, type ParsedFieldProps } from './parsed-field.tsx';

export interface MassFieldProps
  extends Pick<ParsedFieldProps<number>, 'label' | 'path' | 'hint' | 'labelUnseen'> {
  valueG: number | null | undefined;
  onCommit: (valueG: number | null) => void;
}

/** A mass; bare numbers are grams, and ounces are understood. */
export const MassField = ({ valueG, onCommit, ...rest }: MassFieldProps) => (
  <ParsedField<number>
    {...rest}
    value={valueG ?? null}
    unit={{ sign: 'g', spoken: 'in grams' }}
    print={(value) => `${Math.round(value * 10) / 10}`}
    parse={(text) => {
      const read = parseMass(text, { field: rest.label, unit: 'g' });
      return read.ok ? { ok: true, value: read.value.value } : read;
    }}
    onCommit={onCommit}
  />
);
