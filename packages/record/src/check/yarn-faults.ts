import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord, Yarn } from '../schema/index.ts';
import { fault } from './doubt.ts';

/** Labels round each share to a whole percent: three fibres may miss 100 by one and a half. */
const SHARE_SLACK = 1.5;
/** From finest cobweb lace to rope, in metres. Common practice, no source; set wide on purpose. */
const METRES_PER_100G = [20, 3000] as const;

/** Faults of the yarns: shares that do not make a whole, fibres named twice, impossible numbers. */
export const yarnFaults = (record: GarmentRecord): Fault[] =>
  record.yarns.flatMap((yarn, at) => {
    const path = `yarns[${at}]`;
    return [
      ...shares(yarn, path),
      ...named(yarn, path),
      ...treated(yarn, path),
      ...fineness(yarn, path),
    ];
  });

const shares = ({ fibres }: Yarn, path: string): Fault[] => {
  const sum = Math.round(fibres.reduce((total, { percent }) => total + percent, 0) * 100) / 100;
  if (fibres.length === 0 || Math.abs(sum - 100) <= SHARE_SLACK) return [];
  return [
    fault(
      'shares-do-not-sum',
      `${path}.fibres`,
      `${sum} %`,
      `the shares make ${sum} %, not 100 %`,
      'Correct the shares, or add the fibre that is missing ("other" if it is not listed).',
    ),
  ];
};

const named = ({ fibres }: Yarn, path: string): Fault[] =>
  fibres.flatMap(({ fibre }, at) =>
    fibres.findIndex((other) => other.fibre === fibre) === at
      ? []
      : [
          fault(
            'duplicate-fibre',
            `${path}.fibres[${at}].fibre`,
            fibre,
            'this fibre is named twice',
            'Add the two shares into one.',
          ),
        ],
  );

const treated = ({ fibres, treatment }: Yarn, path: string): Fault[] =>
  treatment !== 'superwash' || fibres.length === 0 || fibres.some(({ fibre }) => fibre === 'wool')
    ? []
    : [
        fault(
          'doubt-superwash',
          `${path}.treatment`,
          treatment,
          'superwash is a treatment of wool, and there is no wool in this yarn',
          'Write "untreated", or add the wool.',
        ),
      ];

const fineness = ({ metresPer100g }: Yarn, path: string): Fault[] =>
  metresPer100g === undefined ||
  (metresPer100g >= METRES_PER_100G[0] && metresPer100g <= METRES_PER_100G[1])
    ? []
    : [
        fault(
          'doubt-yarn-length',
          `${path}.metresPer100g`,
          metresPer100g,
          `${metresPer100g} m in 100 g is no usual yarn`,
          'Check whether it is metres, and in 100 g rather than in a skein.',
        ),
      ];
