import type { ReactNode } from 'react';
import { TextField } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import type { Typed } from './typed.ts';

export const TypedField = <T,>({ typed, hint }: { typed: Typed<T>; hint?: ReactNode }) => {
  const { readOnly } = useGarment();
  const { fault } = typed;
  return (
    <TextField
      label={typed.label}
      value={typed.text}
      onChange={typed.setText}
      hint={hint}
      fault={
        fault &&
        `${fault.problem.slice(0, 1).toUpperCase()}${fault.problem.slice(1)}. ${fault.mend}`
      }
      readOnly={readOnly}
    />
  );
};
