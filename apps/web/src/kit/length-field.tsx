import { formatLength, type Millimetres, mm, parseLength } from '@dryflat/engine/units';
import { useView } from '../store/index.ts';
import { ParsedField, type ParsedFieldProps } from './parsed-field.tsx';

const SPOKEN = { cm: 'in centimetres', in: 'in inches', mm: 'in millimetres' } as const;

export interface LengthFieldProps
  extends Pick<ParsedFieldProps<Millimetres>, 'label' | 'path' | 'hint' | 'labelUnseen'> {
  /** Millimetres, as records keep them. */
  valueMm: number | null | undefined;
  onCommit: (valueMm: number | null) => void;
  /** Fixes the unit of bare numbers, as for needles, which are always in mm. */
  unit?: 'mm' | 'cm' | 'in';
  /** Ease: zero and negative lengths are allowed. */
  signed?: boolean;
}

/**
 * A length in whatever unit it is typed; a bare number is in the unit that everything is shown in.
 * Printed to the tape's mark, but the value stays as exact as it was given: only typing changes it.
 */
export const LengthField = ({
  valueMm,
  onCommit,
  unit: fixed,
  signed = false,
  ...rest
}: LengthFieldProps) => {
  const { units } = useView();
  const unit = fixed ?? units;
  return (
    <ParsedField<number>
      {...rest}
      value={valueMm ?? null}
      unit={{ sign: unit, spoken: SPOKEN[unit] }}
      print={(value) => formatLength(mm(value), { unit, bare: true })}
      parse={(text) => {
        const read = parseLength(text, { field: rest.label, unit, signed });
        return read.ok ? { ok: true, value: read.value.value } : read;
      }}
      onCommit={onCommit}
    />
  );
};
