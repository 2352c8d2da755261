import type { MalformedCase } from './malformed-case.ts';

/** Records of the right shape that say what cannot be, or is unlikely: wearer. */
export const SENSE_OF_WEARER: readonly MalformedCase[] = [
  {
    title: 'duplicate body',
    path: 'wearer.body[1].landmark',
    value: 'chest',
    says: [
      'wearer.body[1].landmark: wearer.body[0] says something of it already (given: "chest"). Keep one of the two.',
      'wearer.body[1].mm: "chest" of 290 mm (11.4 in) is not to be expected of a woman (given: 290). Check the number and its unit; 700 mm (27.6 in) to 1650 mm (65 in) is usual.',
    ],
  },
  {
    title: 'body too large for a baby',
    path: 'wearer.group',
    value: 'baby',
    says: [
      'wearer.body[0].mm: "chest" of 914 mm (36 in) is not to be expected of a baby (given: 914). Check the number and its unit; 300 mm (11.8 in) to 580 mm (22.8 in) is usual.',
      'wearer.body[1].mm: "upper-arm" of 290 mm (11.4 in) is not to be expected of a baby (given: 290). Check the number and its unit; 90 mm (3.5 in) to 230 mm (9.1 in) is usual.',
    ],
  },
  {
    title: 'body measured in centimetres',
    path: 'wearer.body[0].mm',
    value: 91.4,
    says: [
      'wearer.body[0].mm: "chest" of 91.4 mm (3.6 in) is not to be expected of a woman (given: 91.4). Check the number and its unit; 700 mm (27.6 in) to 1650 mm (65 in) is usual.',
      'pattern.measurements[0]: "Chest" of 1000 mm (39.4 in) around is far from the body\'s 91.4 mm (3.6 in) (given: 1000). Check the number and its unit.',
    ],
  },
  {
    title: 'body at a landmark of the garment',
    path: 'wearer.body[1].landmark',
    value: 'cuff',
    says: [
      'wearer.body[1].landmark: nothing is compared with a body measurement of this name (given: "cuff"). Use "wrist" if that is meant.',
    ],
  },
  {
    title: 'ease upside down',
    path: 'wearer.wanted[0].minMm',
    value: 150,
    says: [
      'wearer.wanted[0].minMm: the least, 150 mm (5.9 in), is more than the most, 100 mm (3.9 in) (given: 150). Swap the two.',
    ],
  },
  {
    title: 'wanted where nothing is measured',
    path: 'wearer.wanted[1].landmark',
    value: 'sleeve-length',
    says: [
      'wearer.wanted[1].landmark: the pattern has no measurement there, so its fit cannot be told (given: "sleeve-length"). Add the measurement to the pattern, or leave the wish out.',
    ],
  },
  {
    title: 'ease over no body',
    path: 'wearer.wanted[0].landmark',
    value: 'waist',
    says: [
      'wearer.wanted[0].landmark: the pattern has no measurement there, so its fit cannot be told (given: "waist"). Add the measurement to the pattern, or leave the wish out.',
      'wearer.wanted[0].landmark: ease is over a body, and no body measurement is given there (given: "waist"). Measure the body\'s "waist", or want a finished measurement instead.',
    ],
  },
  {
    title: 'finished upside down',
    path: 'wearer.wanted[1].maxMm',
    value: 500,
    says: [
      'wearer.wanted[1].minMm: the least, 560 mm (22 in), is more than the most, 500 mm (19.7 in) (given: 560). Swap the two.',
    ],
  },
];
