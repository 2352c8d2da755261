import { useDraftText } from '../../store/index.ts';

/** A number that is kept on this device beside the garment and is no part of its record; null where empty. */
export const useAsideNumber = (
  name: string,
): readonly [number | null, (value: number | null) => void] => {
  const [text, setText] = useDraftText(`aside/counts/${name}/kept`);
  const value = text === null ? Number.NaN : Number(text);
  return [
    Number.isFinite(value) ? value : null,
    (next) => setText(next === null ? null : String(next)),
  ];
};

/** A choice that is kept on this device beside the garment. */
export const useAsideChoice = <T extends string>(
  name: string,
  all: readonly T[],
  otherwise: T,
): readonly [T, (value: T) => void] => {
  const [text, setText] = useDraftText(`aside/counts/${name}/kept`);
  return [all.find((each) => each === text) ?? otherwise, setText];
};
