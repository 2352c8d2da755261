import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '../schema/index.ts';
import { fault } from './doubt.ts';

type Placed = readonly [path: string, id: string];

const placed = (path: string, list: readonly { readonly id: string }[] = []): Placed[] =>
  list.map(({ id }, at) => [`${path}[${at}].id`, id]);

/** Groups of ids that are told apart by nothing else, each unique within its group. */
const groups = (record: GarmentRecord): Placed[][] => [
  placed('pattern.measurements', record.pattern.measurements),
  placed('yarns', record.yarns),
  placed('evidence', record.evidence),
  ...record.evidence.map((specimen, at) => placed(`evidence[${at}].readings`, specimen.readings)),
  placed('pieces', record.pieces),
  [
    ...record.pieces.flatMap((piece, at) => placed(`pieces[${at}].measured`, piece.measured)),
    ...record.outcomes.flatMap((each, at) => placed(`outcomes[${at}].measured`, each.measured)),
  ],
  placed('forecasts', record.forecasts),
  placed('outcomes', record.outcomes),
  placed('notes', record.notes),
  placed('photos', record.photos),
  placed('people', record.people),
  placed('pace.log', record.pace?.log),
  placed('instructions', record.instructions),
  ...matGroups(record),
];

const matGroups = ({ onMat = [], dryings = [] }: GarmentRecord): Placed[][] => [
  placed('onMat', onMat),
  ...onMat.map(({ told }, at) => placed(`onMat[${at}].told`, told)),
  placed('dryings', dryings),
  ...dryings.map(({ thick }, at) => placed(`dryings[${at}].thick`, thick)),
  ...dryings.map(({ weighings }, at) => placed(`dryings[${at}].weighings`, weighings)),
  ...dryings.map(({ touches }, at) => placed(`dryings[${at}].touches`, touches)),
];

/** Ids that stand twice where they must tell things apart. */
export const idFaults = (record: GarmentRecord): Fault[] => groups(record).flatMap(repeated);

const repeated = (group: Placed[]): Fault[] => {
  const first = new Map<string, string>();
  return group.flatMap(([path, id]) => {
    const before = first.get(id);
    if (before === undefined) first.set(id, path);
    return before === undefined
      ? []
      : [
          fault(
            'duplicate-id',
            path,
            id,
            `this id is taken by ${before}`,
            'Give it an id of its own.',
          ),
        ];
  });
};
