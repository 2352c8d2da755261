import { formatYarnLength, metres, parseYarnLength } from '@dryflat/engine/units';
import { ParsedField, type ParsedFieldProps, useUnitWord } from '../../kit/index.ts';
import { useView } from '../../store/index.ts';

/** Metres where lengths are shown in centimetres, yards where in inches; either can be typed. */
export const MetresField = ({
  valueM,
  onCommit,
  ...rest
}: Pick<ParsedFieldProps<number>, 'label' | 'path' | 'hint'> & {
  valueM: number | null | undefined;
  onCommit: (valueM: number | null) => void;
}) => {
  const { units } = useView();
  const spelled = useUnitWord('metres');
  const unit = units === 'cm' ? 'm' : 'yd';
  return (
    <ParsedField<number>
      {...rest}
      value={valueM ?? null}
      unit={{ sign: unit, spoken: unit === 'm' ? `in ${spelled}` : 'in yards' }}
      print={(value) => formatYarnLength(metres(value), { unit }).replace(/\s*(?:m|yd)$/, '')}
      parse={(text) => {
        const read = parseYarnLength(text, { field: rest.label, unit });
        return read.ok ? { ok: true, value: read.value.value } : read;
      }}
      onCommit={onCommit}
    />
  );
};
