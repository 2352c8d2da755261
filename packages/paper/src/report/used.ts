import type { GarmentRecord, Yarn } from '@dryflat/record';

export interface YarnUsed {
  readonly name: string;
  readonly fibres: Yarn['fibres'];
  readonly dyeLots: readonly string[];
  readonly skeins: number;
  /** By the balls less what is left by the scale; null where either is not known. */
  readonly usedG: number | null;
  readonly metresPer100g: number | null;
}

/** Mass of all skeins; null where one has none. */
const bought = ({ lots }: Yarn): number | null =>
  lots.length === 0 || lots.some(({ gramsEach }) => gramsEach === undefined)
    ? null
    : lots.reduce((sum, { skeins, gramsEach }) => sum + skeins * (gramsEach ?? 0), 0);

const leftOf = ({ left = [] }: GarmentRecord, yarn: Yarn): number | null =>
  left.filter((each) => each.yarn === yarn.id).at(-1)?.massG ?? null;

const usedOf = (record: GarmentRecord, yarn: Yarn): YarnUsed => {
  const [all, left] = [bought(yarn), leftOf(record, yarn)];
  return {
    name: yarn.name,
    fibres: yarn.fibres,
    dyeLots: yarn.lots.flatMap(({ dyeLot }) => (dyeLot === '' ? [] : [dyeLot])),
    skeins: yarn.lots.reduce((sum, { skeins }) => sum + skeins, 0),
    usedG: all === null || left === null || left > all ? null : all - left,
    metresPer100g: yarn.metresPer100g ?? null,
  };
};

/** Every yarn, and what went into the garment in all: as the knitter says, else by the balls. */
export const yarnUsed = (
  record: GarmentRecord,
): { readonly yarns: readonly YarnUsed[]; readonly usedG: number | null } => {
  const yarns = record.yarns.map((yarn) => usedOf(record, yarn));
  const all = yarns.every(({ usedG }) => usedG !== null) && yarns.length > 0;
  const counted = all ? yarns.reduce((sum, { usedG }) => sum + (usedG ?? 0), 0) : null;
  return { yarns, usedG: record.report?.usedG ?? counted };
};

/** Hours of knitting: as the knitter says, else as they were timed; null where neither is. */
export const hoursOf = ({ report, pace }: GarmentRecord): number | null => {
  if (report?.hours !== undefined) return report.hours;
  const minutes = (pace?.log ?? []).reduce((sum, each) => sum + each.minutes, 0);
  return minutes === 0 ? null : minutes / 60;
};
