import type { Misprint } from '@dryflat/engine/garment';
import { ChoiceChips, Icon, useLengths } from '../../kit/index.ts';

/** Inches and centimetres that cannot both be right: the knitter says which one holds. */
export const MisprintChoice = ({
  misprint: { inches, centimetres, suspect, sentence },
  size,
  name,
  valueMm,
  onChange,
}: {
  misprint: Misprint;
  size: string;
  name: string;
  /** The value decided on; null while it is open. */
  valueMm: number | null;
  onChange: (valueMm: number) => void;
}) => {
  const lengths = useLengths();
  const both = { in: inches, cm: centimetres };
  const chosen = (['in', 'cm'] as const).find((unit) => both[unit].mm === valueMm) ?? null;
  const noteOf = (unit: 'in' | 'cm'): string | undefined => {
    const { mm } = both[unit];
    const other = unit !== lengths.units && mm !== null ? `That is ${lengths.length(mm)}. ` : '';
    return (
      `${other}${suspect === unit ? 'The sizes beside it speak against it.' : ''}`.trim() ||
      undefined
    );
  };
  return (
    <div className="pt-misprint">
      <Icon name="warn" />
      <ChoiceChips
        label={`${name}, size ${size}: which is meant?`}
        hint={lengths.sentence(sentence)}
        value={chosen}
        onChange={(unit) => {
          const { mm } = both[unit];
          if (mm !== null) onChange(mm);
        }}
        choices={(['in', 'cm'] as const).map((unit) => ({
          value: unit,
          label: `${both[unit].text.trim()} ${unit}`,
          note: noteOf(unit),
        }))}
      />
    </div>
  );
};
