import { blendRegain } from '../textile/index.ts';
import type { Fault } from '../units/index.ts';
import { SCALE_SD } from './assumptions.ts';
import { between, dryFault as fault } from './dry-fault.ts';
import { massesFaults } from './masses-faults.ts';
import type { DryingQuestion, Lying, RoomAir } from './types.ts';

/** °C. Frozen water dries by another law; hotter than any drying cupboard for wool is a mistake. */
const [COLDEST, HOTTEST] = [0, 45];
/** Metres above the sea where people live, Dead Sea to high Andes. */
const [LOWEST, HIGHEST] = [-450, 6000];

const humidityFaults = (percent: number): Fault[] => {
  if (percent === 100)
    return [
      fault(
        'never',
        'air.humidityPercent',
        '100 %',
        'in air of 100 % humidity nothing dries',
        'Move it to a drier or warmer room, or air the room.',
      ),
    ];
  if (percent > 0 && percent < 100) return [];
  return [
    fault(
      'humidity',
      'air.humidityPercent',
      `${percent} %`,
      'no room has this relative humidity',
      'Give a number above 0 and below 100, as a hygrometer shows it.',
    ),
  ];
};

const airFaults = ({ temperature, humidityPercent, altitudeM = 0 }: RoomAir): Fault[] => {
  const faults = humidityFaults(humidityPercent);
  if (!between(temperature, COLDEST, HOTTEST))
    faults.push(
      fault(
        'temperature',
        'air.temperature',
        `${temperature} °C`,
        'the air is not between 0 and 45 °C; frozen water and ovens dry by other laws',
        'Give the temperature of the room.',
      ),
    );
  if (!between(altitudeM, LOWEST, HIGHEST))
    faults.push(
      fault(
        'altitude',
        'air.altitudeM',
        `${altitudeM} m`,
        'nobody lives at this height',
        'Give metres above the sea, or leave it out.',
      ),
    );
  return faults;
};

const thickFaults = ({ thick }: Lying): Fault[] => {
  const places = thick ?? [];
  const faults = places.flatMap(({ share, times }, i) =>
    share > 0 && share < 1 && times > 1 && times <= 20
      ? []
      : [
          fault(
            'thick',
            `lying.thick[${i}]`,
            `${share * 100} % of the mass, ${times} times as thick`,
            'a thick place has some of the mass, not all, and is more than 1 to 20 times as thick',
            'Correct its share or its thickness, or leave it out.',
          ),
        ],
  );
  const total = places.reduce((sum, { share }) => sum + share, 0);
  if (faults.length === 0 && total >= 1)
    faults.push(
      fault(
        'thick-shares',
        'lying.thick',
        `${total * 100} %`,
        'the thick places leave nothing for the rest',
        'Give shares that together are below 100 %.',
      ),
    );
  return faults;
};

/** kg/m² of one layer: beyond the finest lace and the thickest rug something is in another unit. */
const [LIGHTEST, HEAVIEST] = [0.02, 4];

const areaFaults = ({ dry, lying }: DryingQuestion): Fault[] => {
  const { fabricM2 } = lying;
  if (fabricM2 === null || between(dry.mass / 1000 / fabricM2, LIGHTEST, HEAVIEST)) return [];
  return [
    fault(
      'area',
      'lying.fabricM2',
      `${fabricM2} m²`,
      'no knitting of this mass has this area',
      'Give square metres of fabric, one face, all layers; or leave it out.',
    ),
  ];
};

const massFaults = ({ dry, scaleSd = SCALE_SD }: DryingQuestion): Fault[] => {
  const faults: Fault[] = [];
  if (!between(dry.mass, 1, 20_000))
    faults.push(
      fault(
        'mass',
        'dry.mass',
        `${dry.mass} g`,
        'the dry garment is not between 1 g and 20 kg',
        'Give its mass in grams.',
      ),
    );
  if (typeof dry.air === 'number' && !(dry.air > 0 && dry.air < 100))
    faults.push(
      fault(
        'dry-air',
        'dry.air',
        `${dry.air} %`,
        'no room has this relative humidity',
        'Give the humidity that it was weighed in, or say it was in this room.',
      ),
    );
  if (!between(scaleSd, 0.01, 500))
    faults.push(
      fault(
        'scale',
        'scaleSd',
        `${scaleSd} g`,
        'no scale for yarn is this sure or unsure',
        'Leave it out, or give 0.01 to 500 g.',
      ),
    );
  return faults;
};

const blend = ({ fibres }: DryingQuestion): readonly Fault[] => {
  const regain = blendRegain(fibres, 'real');
  return regain.ok ? [] : regain.faults;
};

/** Everything wrong with a question; empty when it can be answered. */
export const dryingFaults = (question: DryingQuestion): readonly Fault[] => {
  const mass = massFaults(question);
  const wrong = [
    ...blend(question),
    ...airFaults(question.air),
    ...(mass.length > 0 ? mass : areaFaults(question)),
    ...thickFaults(question.lying),
  ];
  return wrong.length > 0 ? wrong : massesFaults(question);
};
