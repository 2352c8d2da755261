import { formatCount, parseCount } from './parse-count.ts';
import { ParsedField, type ParsedFieldProps } from './parsed-field.tsx';

export interface CountFieldProps
  extends Pick<ParsedFieldProps<number>, 'label' | 'path' | 'hint' | 'labelUnseen' | 'unit'> {
  value: number | null | undefined;
  onCommit: (value: number | null) => void;
  /** Refuses halves. */
  whole?: boolean;
  /** Takes 0 as well: nothing left, none found. */
  orNone?: boolean;
}

/** A count of stitches, rows or skeins; halves are welcome unless `whole`. */
export const CountField = ({ value, whole = false, orNone = false, ...rest }: CountFieldProps) => (
  <ParsedField<number>
    {...rest}
    value={value ?? null}
    print={formatCount}
    parse={(text) => parseCount(text, rest.label, whole, orNone)}
  />
);
