import type { MalformedCase } from './malformed-case.ts';

/** Records of the right shape that say what cannot be, or is unlikely: pace, progress, yarn left, people, report. */
export const SENSE_OF_WORK: readonly MalformedCase[] = [
  {
    title: 'no hour in the week',
    path: 'pace.hours',
    value: [0, 0, 0, 0, 0, 0, 0],
    says: [
      'pace.hours: no day of the week has an hour for knitting, so that it is never done (given: "0, 0, 0, 0, 0, 0, 0"). Enter hours for the days on which she knits, Monday first.',
    ],
  },
  {
    title: 'pace entry twice',
    path: 'pace.log',
    value: [
      { id: 'e', minutes: 60, stitches: 1500, fabric: 'plain' },
      { id: 'e', minutes: 30, stitches: 700, fabric: 'plain' },
    ],
    says: [
      'pace.log[1].id: this id is taken by pace.log[0].id (given: "e"). Give it an id of its own.',
    ],
  },
  {
    title: 'nothing counts',
    path: 'plan.weights',
    value: { fit: 0, time: 0, yarn: 0 },
    says: [
      'plan.weights: nothing counts, so that no way is better than another (given: "fit 0, time 0, yarn 0"). Give at least one of them more than 0, or leave weights out.',
    ],
  },
  {
    title: 'progress of a piece misspelled',
    path: 'progress[1].piece',
    value: 'frnt',
    says: [
      'progress[1].piece: the garment has no piece of this name, so that it does not count (given: "frnt"). Use "front" if that is meant.',
    ],
  },
  {
    title: 'progress of a piece that is not there',
    path: 'progress[1].piece',
    value: 'gusset',
    says: [
      'progress[1].piece: the garment has no piece of this name, so that it does not count (given: "gusset"). Use one of front, back, sleeve.',
    ],
  },
  {
    title: 'progress of a piece twice',
    path: 'progress[1].piece',
    value: 'back',
    says: [
      'progress[1].piece: progress[0] says how far it is already (given: "back"). Keep one of the two.',
    ],
  },
  {
    title: 'left of a yarn misspelled',
    path: 'left[0].yarn',
    value: 'mainn',
    says: [
      'left[0].yarn: there is no yarn of this id (given: "mainn"). Use "main", or add the yarn.',
    ],
  },
  {
    title: 'left of a yarn that is not there',
    path: 'left[0].yarn',
    value: 'contrast',
    says: ['left[0].yarn: there is no yarn of this id (given: "contrast"). Use one of main.'],
  },
  {
    title: 'left of a yarn twice',
    path: 'left',
    value: [
      { yarn: 'main', massG: 120 },
      { yarn: 'main', massG: 80 },
    ],
    says: [
      'left[1].yarn: left[0] says what is left of it already (given: "main"). Keep one of the two.',
    ],
  },
  {
    title: 'more left than was bought',
    path: 'left[0].massG',
    value: 450,
    says: [
      'left[0].massG: 450 g are left of 400 g that were bought (given: 450). Check the scale, or add the skeins that are missing to the lots.',
    ],
  },
  {
    title: 'report of a photo that is not there',
    path: 'report.photos[0]',
    value: 'x',
    says: [
      'report.photos[0]: there is no photo of this id (given: "x"). Use one of p, or leave it out.',
    ],
  },
  {
    title: 'instructions twice',
    path: 'instructions',
    value: [
      { id: 'i', piece: 'back', text: '' },
      { id: 'i', piece: 'front', text: '' },
    ],
    says: [
      'instructions[1].id: this id is taken by instructions[0].id (given: "i"). Give it an id of its own.',
    ],
  },
  {
    title: 'a man of 100 mm',
    path: 'people[0].body[0].mm',
    value: 100,
    says: [
      'people[0].body[0].mm: "chest" of 100 mm (3.9 in) is not to be expected of a man (given: 100). Check the number and its unit; 700 mm (27.6 in) to 1650 mm (65 in) is usual.',
    ],
  },
  {
    title: 'a body measurement of a person that nothing uses',
    path: 'people[0].body[0].landmark',
    value: 'chst',
    says: [
      'people[0].body[0].landmark: nothing is compared with a body measurement of this name (given: "chst"). Use one of chest, waist, hip, cross-back, upper-arm, wrist, back-length, armhole-depth, arm-length, head, hat-height, foot, foot-length, ankle, hand, hand-length, neck-to-wrist, back-hip-length.',
    ],
  },
  {
    title: 'a body measurement of a person twice',
    path: 'people[0].body',
    value: [
      { landmark: 'chest', mm: 1000, from: { kind: 'measured' } },
      { landmark: 'chest', mm: 990, from: { kind: 'measured' } },
    ],
    says: [
      'people[0].body[1].landmark: people[0].body[0] says something of it already (given: "chest"). Keep one of the two.',
    ],
  },
];
