import { useEffect, useState } from 'react';
import { halfTyped } from '../store/half-typed.ts';
import { useDrafts } from '../store/index.ts';

/** Milliseconds: longer than any pause in typing, so that the line does not come and go meanwhile. */
const SETTLES = 2_000;

/** Says that some entries are kept as typed but cannot be counted yet. */
export const HalfTypedLine = () => {
  const count = useSettled(halfTyped(useDrafts()).length);
  if (count === 0) return null;
  return (
    <p className="df-half-typed">
      {count === 1 ? 'One entry is' : `${count} entries are`} half typed: kept as typed, left out of
      the forecast
    </p>
  );
};

const useSettled = (value: number): number => {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(setSettled, SETTLES, value);
    return () => clearTimeout(timer);
  }, [value]);
  return value === 0 ? 0 : settled;
};
