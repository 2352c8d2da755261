import { ParsedField, type ParsedFieldProps } from '../../kit/index.ts';
import { type DurationBounds, parseDuration, printDuration } from './parse-duration.ts';

/** A length of time, held in minutes. */
export const DurationField = ({
  minutes,
  bounds,
  ...rest
}: Pick<ParsedFieldProps<number>, 'label' | 'path' | 'hint' | 'onCommit'> & {
  minutes: number | null;
  bounds: DurationBounds;
}) => (
  <ParsedField<number>
    {...rest}
    keys="text"
    value={minutes}
    print={printDuration}
    parse={(text) => parseDuration(text, rest.label, bounds)}
  />
);
