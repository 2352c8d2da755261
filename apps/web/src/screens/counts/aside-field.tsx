import { COUNT_SPANS, type CountSpan, countOfPitch } from '@dryflat/engine/units';
import { CountField, LengthField } from '../../kit/index.ts';
import { useAsideNumber } from './use-aside.ts';

interface AsideFieldProps {
  /** Name of the number on this device. */
  name: string;
  label: string;
  hint?: string;
}

/** A count that belongs to a sum and not to the garment. */
export const AsideCount = ({ name, label, hint }: AsideFieldProps) => {
  const [value, keep] = useAsideNumber(name);
  return (
    <CountField
      label={label}
      hint={hint}
      path={`aside/counts/${name}`}
      whole
      value={value}
      onCommit={keep}
    />
  );
};

/** Stitches or rows over a customary length; kept as the width or height of one, in millimetres. */
export const AsideGauge = ({ name, label, hint, span }: AsideFieldProps & { span: CountSpan }) => {
  const [pitchMm, keep] = useAsideNumber(name);
  return (
    <CountField
      label={label}
      hint={hint}
      path={`aside/counts/${name}`}
      value={pitchMm === null ? null : countOfPitch(pitchMm, span)}
      onCommit={(count) => keep(count === null ? null : COUNT_SPANS[span] / count)}
    />
  );
};

/** A length that belongs to a sum and not to the garment. */
export const AsideLength = ({ name, label, hint }: AsideFieldProps) => {
  const [value, keep] = useAsideNumber(name);
  return (
    <LengthField
      label={label}
      hint={hint}
      path={`aside/counts/${name}`}
      valueMm={value}
      onCommit={keep}
    />
  );
};
