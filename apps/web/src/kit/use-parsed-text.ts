import type { Fault, Result } from '@dryflat/engine/units';
import { useCallback, useEffect, useRef, useState } from 'react';
import { useDraftText } from '../store/index.ts';

/** Typing that pauses this long, in milliseconds, is taken as meant. Chosen by feel, no source. */
const PAUSE = 600;

export interface ParsedText<T> {
  /** Names the field by ids: the key under which unusable text is kept. */
  readonly path: string;
  readonly value: T | null;
  readonly print: (value: T) => string;
  readonly parse: (text: string) => Result<T>;
  /** Null when the field was emptied. */
  readonly onCommit: (value: T | null) => void;
}

export interface TypedText {
  readonly text: string;
  readonly fault: Fault | null;
  readonly onChange: (text: string) => void;
  readonly onFocus: () => void;
  readonly onBlur: () => void;
}

/**
 * A field of text that stands for a value. Every keystroke is kept on the device as typed; when the
 * typing pauses or the field is left, text that reads as a value is committed, and text that does
 * not stays where it is, with its fault, until it is mended.
 */
export const useParsedText = <T>(field: ParsedText<T>): TypedText => {
  const [draft, setDraft] = useDraftText(field.path);
  const [typing, setTyping] = useState<string | null>(null);
  const [paused, setPaused] = useState(true);
  const [focused, setFocused] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const committed = useRef(field.value);
  const latest = useRef(field);
  latest.current = field;

  const settle = useCallback(
    (text: string): void => {
      clearTimeout(timer.current);
      setPaused(true);
      const { parse, value, onCommit } = latest.current;
      const read: Result<T | null> = text.trim() === '' ? { ok: true, value: null } : parse(text);
      if (!read.ok) return;
      committed.current = read.value;
      if (read.value !== value) onCommit(read.value);
      setDraft(null);
    },
    [setDraft],
  );
  const open = useRef(draft);
  open.current = draft;

  // Text kept from an earlier visit, and text in hand when the field goes away, is settled.
  useEffect(() => {
    if (open.current !== null) settle(open.current);
    return () => {
      if (open.current !== null) settle(open.current);
    };
  }, [settle]);
  // A value that came from elsewhere (undo, another device) replaces what is in the field.
  useEffect(() => {
    if (field.value !== committed.current) setTyping(null);
    committed.current = field.value;
  }, [field.value]);

  const text = typing ?? draft ?? (field.value === null ? '' : field.print(field.value));
  return {
    text,
    fault: draft !== null && (paused || !focused) ? faultOf(field, draft) : null,
    onChange: (next) => {
      setTyping(next);
      setDraft(next);
      setPaused(false);
      clearTimeout(timer.current);
      timer.current = setTimeout(settle, PAUSE, next);
    },
    onFocus: () => setFocused(true),
    onBlur: () => {
      setFocused(false);
      if (draft !== null) settle(draft);
      setTyping(null);
    },
  };
};

const faultOf = <T>(field: ParsedText<T>, text: string): Fault | null => {
  if (text.trim() === '') return null;
  const read = field.parse(text);
  return read.ok ? null : (read.faults[0] ?? null);
};
