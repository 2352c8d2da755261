import { type Needle, nearestNeedle, needleFromUs } from '@dryflat/engine/textile';
import { formatExact, mm, parseLength, type Result } from '@dryflat/engine/units';
import { ParsedField, type ParsedFieldProps } from './parsed-field.tsx';

export interface NeedleFieldProps extends Pick<ParsedFieldProps<number>, 'label' | 'path'> {
  valueMm: number | null | undefined;
  onCommit: (valueMm: number | null) => void;
  hint?: string;
}

const US_SIZE = /^\s*us\b/i;

const readNeedle = (text: string, field: string): Result<number> => {
  if (US_SIZE.test(text)) return needleFromUs(text);
  const read = parseLength(text, { field, unit: 'mm' });
  return read.ok ? { ok: true, value: read.value.value } : read;
};

/** Other names of exactly this size: `US 7, old UK 7`. */
const otherNames = ({ us, ukOld }: Needle): string =>
  [us && `US ${us}`, ukOld && `old UK ${ukOld}`].filter(Boolean).join(', ');

const namesOf = (valueMm: number): string => {
  const needle = nearestNeedle(mm(valueMm));
  return Math.abs(needle.size - valueMm) < 0.01 ? otherNames(needle) : 'not a usual size';
};

/** A needle by its diameter in millimetres, or by its US size with the letters before it. */
export const NeedleField = ({ valueMm, onCommit, hint, ...rest }: NeedleFieldProps) => (
  <ParsedField<number>
    {...rest}
    keys="text"
    value={valueMm ?? null}
    unit={{ sign: 'mm', spoken: 'in millimetres' }}
    hint={valueMm == null ? (hint ?? 'In mm, or as US 7.') : namesOf(valueMm) || undefined}
    print={(value) => formatExact(mm(value), { unit: 'mm', bare: true })}
    parse={(text) => readNeedle(text, rest.label)}
    onCommit={onCommit}
  />
);
