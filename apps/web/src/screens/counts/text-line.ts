import type { Fault } from '@dryflat/engine/units';

/** Line of the text that a fault is about, from 1; null where it names none. */
export const lineOfFault = ({ field }: Pick<Fault, 'field'>): number | null => {
  const [, line] = /line (\d+)$/.exec(field) ?? [];
  return line === undefined ? null : Number(line);
};

/** Where that line begins and ends in the text, for selecting it. */
export const rangeOfLine = (text: string, line: number): readonly [number, number] => {
  const lines = text.split('\n');
  const start = lines.slice(0, line - 1).reduce((sum, each) => sum + each.length + 1, 0);
  return [start, start + (lines[line - 1]?.length ?? 0)];
};
