import type { DryingQuestion, DryWeighing, RoomAir } from '@dryflat/engine/drying';
import { celsius, fail, grams, ok, type Result } from '@dryflat/engine/units';
import { yarnPart } from '../ask/yarn-blend.ts';
import { fault, mustBeMended } from '../check/doubt.ts';
import { dryingFaults } from '../check/drying-faults.ts';
import type { Drying, GarmentRecord } from '../schema/index.ts';
import { dryMassOf } from './dry-mass.ts';
import { drawnFabricM2 } from './fabric-area.ts';

const MS_PER_HOUR = 3_600_000;

/**
 * The engine's question for one drying of a record: moments as hours from `begun`, weighings in order
 * of time. The fabric's area is what was given, else that of the drawn pieces, else null. Fails where
 * there is no such drying, where no dry mass is known, and with every fault of that drying; doubts do
 * not stop it.
 */
export const askDrying = (record: GarmentRecord, dryingId: string): Result<DryingQuestion> => {
  const at = (record.dryings ?? []).findIndex(({ id }) => id === dryingId);
  const drying = record.dryings?.[at];
  if (drying === undefined) return noSuchDrying(record, dryingId);
  const dry = dryMassOf(record, drying);
  if (dry === null) return noDryMass(`dryings[${at}].dry`);
  const faults = dryingFaults(record).filter(
    (each) => each.field.startsWith(`dryings[${at}].`) && mustBeMended(each),
  );
  return faults.length > 0 ? fail(...faults) : ok(question(record, drying, dry));
};

const question = (record: GarmentRecord, drying: Drying, dry: DryWeighing): DryingQuestion => ({
  fibres: yarnPart(record.yarns).fibres,
  dry,
  wet: typeof drying.wet === 'number' ? grams(drying.wet) : drying.wet,
  air: airOf(drying.air),
  lying: {
    on: drying.on,
    fabricM2: drying.fabricM2 ?? drawnFabricM2(record),
    layers: drying.layers,
    thick: drying.thick?.map(({ name, share, times }) => ({ name, share, times })) ?? null,
    pinned: drying.pinned,
  },
  weighings: drying.weighings
    .map(({ at, massG }) => ({ hours: hoursFrom(drying.begun, at), mass: grams(massG) }))
    .sort((a, b) => a.hours - b.hours),
});

const hoursFrom = (begun: string, at: string): number =>
  (Date.parse(at) - Date.parse(begun)) / MS_PER_HOUR;

const airOf = ({ temperatureC, humidityPercent, movement, altitudeM }: Drying['air']): RoomAir => ({
  temperature: celsius(temperatureC),
  humidityPercent,
  movement,
  ...(altitudeM === undefined ? {} : { altitudeM }),
});

const noSuchDrying = ({ dryings = [] }: GarmentRecord, id: string): Result<never> =>
  fail(
    dryings.length === 0
      ? fault(
          'no-drying',
          'dryings',
          null,
          'the record has no drying',
          'Begin one: lay the garment out and enter the air of the room.',
        )
      : fault(
          'no-drying',
          'dryings',
          id,
          'the record has no drying of this id',
          `Use one of ${dryings.map((each) => each.id).join(', ')}.`,
        ),
  );

const noDryMass = (field: string): Result<never> =>
  fail(
    fault(
      'no-dry-mass',
      field,
      null,
      'nobody knows what it weighs dry',
      'Enter the mass before the wash, the mass of the garment (massG), or skeins and grams of every lot.',
    ),
  );
