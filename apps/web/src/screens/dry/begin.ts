import type { Drying, GarmentRecord } from '@dryflat/record';
import { ROOM_WORDS } from './humidity-words.ts';
import { isUnpinned, wasPinned } from './pin-kinds.ts';

/** An ordinary room: an assumption, shown as one until it is changed. */
const ROOM = {
  temperatureC: 20,
  humidityPercent: ROOM_WORDS[1]!.percent,
  movement: 'still',
} as const;

/** What the balls weigh by their labels, g; null unless every lot says so. */
const labelMass = ({ yarns }: GarmentRecord): number | null => {
  const lots = yarns.flatMap((yarn) => yarn.lots);
  const grams = lots.map(({ skeins, gramsEach }) => skeins * (gramsEach ?? Number.NaN));
  const sum = grams.reduce((all, each) => all + each, 0);
  return sum > 0 ? sum : null;
};

const dryMass = (record: GarmentRecord): Drying['dry'] => {
  const last = record.dryings?.at(-1)?.dry;
  if (last !== undefined) return { ...last };
  if (record.massG !== undefined) return { massG: record.massG, air: 'here' };
  const sum = labelMass(record);
  return sum === null ? undefined : { massG: sum, air: 'label' };
};

/**
 * A drying that begins now, as the last one was or as is usual, with what the record knows already:
 * nothing is asked twice.
 */
export const beginDrying = (record: GarmentRecord, id: string, nowMs: number): Drying => {
  const last = record.dryings?.at(-1);
  const dry = dryMass(record);
  const lying = record.onMat?.filter((work) => wasPinned(work) && !isUnpinned(work)) ?? [];
  return {
    id,
    begun: new Date(nowMs).toISOString(),
    ...(dry && { dry }),
    wet: typeof last?.wet === 'string' ? last.wet : 'towel',
    air: { ...(last?.air ?? ROOM) },
    on: last?.on ?? 'mat',
    layers: lying.at(-1)?.layers ?? last?.layers ?? (record.plan.sewn ? 2 : 1),
    pinned: lying.length > 0,
    ...(last?.fabricM2 !== undefined && { fabricM2: last.fabricM2 }),
    ...(last?.thick && { thick: structuredClone(last.thick) }),
    weighings: [],
    touches: [],
    turned: [],
  };
};
