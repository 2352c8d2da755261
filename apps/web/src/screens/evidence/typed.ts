import {
  type Fault,
  type Millimetres,
  parseLength,
  parseMass,
  type Result,
} from '@dryflat/engine/units';
import { useState } from 'react';
import { parseCount } from '../../kit/index.ts';
import { useDraftText, useView } from '../../store/index.ts';

/** A field of a form that is read when the form is sent; what is typed is kept on the device. */
export interface Typed<T> {
  readonly label: string;
  readonly text: string;
  readonly setText: (text: string) => void;
  readonly fault: Fault | null;
  /** Reads the text, shows its fault, and gives the value or null. */
  readonly read: () => T | null;
  readonly isEmpty: boolean;
  readonly clear: () => void;
}

export const useTyped = <T>(
  path: string,
  label: string,
  parse: (text: string, field: string) => Result<T>,
): Typed<T> => {
  const [draft, setDraft] = useDraftText(path);
  const [fault, setFault] = useState<Fault | null>(null);
  const text = draft ?? '';
  return {
    label,
    text,
    fault,
    isEmpty: text.trim() === '',
    setText: (next) => {
      setFault(null);
      setDraft(next === '' ? null : next);
    },
    clear: () => {
      setFault(null);
      setDraft(null);
    },
    read: () => {
      const read = parse(text, label);
      setFault(read.ok ? null : (read.faults[0] ?? null));
      return read.ok ? read.value : null;
    },
  };
};

export const useTypedLength = (path: string, label: string): Typed<Millimetres> => {
  const { units } = useView();
  return useTyped(path, label, (text, field) => {
    const read = parseLength(text, { field, unit: units });
    return read.ok ? { ok: true, value: read.value.value } : read;
  });
};

export const useTypedMass = (path: string, label: string): Typed<number> =>
  useTyped(path, label, (text, field) => {
    const read = parseMass(text, { field, unit: 'g' });
    return read.ok ? { ok: true, value: read.value.value } : read;
  });

export const useTypedCount = (path: string, label: string): Typed<number> =>
  useTyped(path, label, (text, field) => parseCount(text, field));
