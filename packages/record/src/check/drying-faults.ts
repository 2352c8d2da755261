import type { Fault } from '@dryflat/engine/units';
import type { Drying, GarmentRecord } from '../schema/index.ts';
import { fault } from './doubt.ts';

/**
 * Wool in a usual room holds up to 16 % of its dry mass as water (from memory), so that nothing comes
 * below this share of what it weighed as dry in a room.
 */
const LEAST_OF_DRY = 0.85;
/** g; a kitchen scale and the handling of a damp towel miss by as much. Assumption. */
const SCALE_SLACK_G = 6;

/** Faults of the dryings: moments before they began, masses that cannot be, thick places that are all. */
export const dryingFaults = (record: GarmentRecord): Fault[] =>
  (record.dryings ?? []).flatMap((drying, at) => {
    const path = `dryings[${at}]`;
    return [
      ...notWet(drying, path),
      ...thickFaults(drying, path),
      ...momentsOf(drying).flatMap(([where, at]) => tooEarly(drying, at, `${path}.${where}`)),
      ...drying.weighings.flatMap(({ massG }, index) =>
        weighingDoubts(drying, massG, `${path}.weighings[${index}].massG`),
      ),
    ];
  });

const notWet = ({ dry, wet }: Drying, path: string): Fault[] =>
  dry === undefined || typeof wet !== 'number' || wet > dry.massG
    ? []
    : [
        fault(
          'not-wet',
          `${path}.wet`,
          wet,
          `after pressing it weighs ${wet} g, no more than the ${dry.massG} g before the wash`,
          'Weigh both again, with all pieces and without the towel, or check whether they are swapped.',
        ),
      ];

const thickFaults = ({ thick = [] }: Drying, path: string): Fault[] => {
  const percent = Math.round(thick.reduce((sum, { share }) => sum + share, 0) * 1000) / 10;
  if (percent < 100) return [];
  return [
    fault(
      'thick-is-all',
      `${path}.thick`,
      `${percent} %`,
      'the thick places are the whole garment',
      'Give each its share of the mass, less than 100 % together.',
    ),
  ];
};

const momentsOf = (drying: Drying): (readonly [string, string])[] => [
  ...drying.weighings.map(({ at }, index) => [`weighings[${index}].at`, at] as const),
  ...drying.touches.map(({ at }, index) => [`touches[${index}].at`, at] as const),
  ...drying.turned.map((at, index) => [`turned[${index}]`, at] as const),
  ...(drying.dried === undefined ? [] : [['dried', drying.dried] as const]),
];

const tooEarly = ({ begun }: Drying, at: string, path: string): Fault[] =>
  Date.parse(at) >= Date.parse(begun)
    ? []
    : [
        fault(
          'moments-out-of-order',
          path,
          at,
          `it was only laid out at ${begun}`,
          'Correct one of the two, or enter it with the drying that it belongs to.',
        ),
      ];

const weighingDoubts = ({ dry, wet }: Drying, massG: number, path: string): Fault[] => [
  ...(typeof wet !== 'number' || massG <= wet + SCALE_SLACK_G
    ? []
    : [
        fault(
          'doubt-weighing-gained',
          path,
          massG,
          `it weighs ${massG} g, more than the ${wet} g after pressing`,
          'Weigh it again; if it was wetted anew, begin a new drying.',
        ),
      ]),
  ...(dry === undefined || massG >= LEAST_OF_DRY * dry.massG - SCALE_SLACK_G
    ? []
    : [
        fault(
          'doubt-weighing-lost',
          path,
          massG,
          `it weighs ${massG} g, far less than the ${dry.massG} g before the wash`,
          'Weigh it again with all its pieces, or correct the mass before the wash.',
        ),
      ]),
];
