import type { MalformedCase } from './malformed-case.ts';

/** Records of the right shape that say what cannot be, or is unlikely: pattern. */
export const SENSE_OF_PATTERN: readonly MalformedCase[] = [
  {
    title: 'duplicate measurement id',
    path: 'pattern.measurements[1].id',
    value: 'chest',
    says: [
      'pattern.measurements[1].id: this id is taken by pattern.measurements[0].id (given: "chest"). Give it an id of its own.',
      'plan.pinTo[0].measurement: the pattern has no measurement of this id (given: "length"). Use one of chest, pocket.',
      'outcomes[0].measured[0].measurement: the pattern has no measurement of this id (given: "length"). Use one of chest, pocket.',
    ],
  },
  {
    title: 'two sizes of one name',
    path: 'pattern.sizes[2]',
    value: 'S',
    says: [
      'pattern.sizes[2]: two sizes have the same name (given: "S"). Give each size a name of its own.',
    ],
  },
  {
    title: 'chosen size not among them',
    path: 'pattern.chosen',
    value: 'XL',
    says: [
      'pattern.chosen: the pattern has no size of this name (given: "XL"). Choose one of "S", "M", "L".',
    ],
  },
  {
    title: 'a size too many',
    path: 'pattern.sizes[3]',
    value: 'XL',
    says: [
      'pattern.measurements[0].values: it has 3 values for 4 sizes (given: "3 values"). Give 4 values, with null where the pattern gives none.',
      'pattern.measurements[0].counts: it has 3 counts for 4 sizes (given: "3 counts"). Give 4 counts, with null where the pattern gives none.',
      'pattern.measurements[1].values: it has 3 values for 4 sizes (given: "3 values"). Give 4 values, with null where the pattern gives none.',
      'pattern.measurements[2].values: it has 3 values for 4 sizes (given: "3 values"). Give 4 values, with null where the pattern gives none.',
    ],
  },
  {
    title: 'a count too few',
    path: 'pattern.measurements[0].counts',
    value: [180, 200],
    says: [
      'pattern.measurements[0].counts: it has 2 counts for 3 sizes (given: "2 counts"). Give 3 counts, with null where the pattern gives none.',
    ],
  },
  {
    title: 'landmark misspelled',
    path: 'pattern.measurements[1].landmark',
    value: 'body-lenght',
    says: [
      'wearer.wanted[1].landmark: the pattern has no measurement there, so its fit cannot be told (given: "body-length"). Add the measurement to the pattern, or leave the wish out.',
      'pattern.measurements[1].direction: "body-lenght" is a landmark of your own, and nothing says which way it runs. Write "width" or "length", or use the landmark "body-length".',
    ],
  },
  {
    title: 'landmark of her own without direction',
    path: 'pattern.measurements[2].direction',
    value: undefined,
    says: [
      'pattern.measurements[2].direction: "pocket" is a landmark of your own, and nothing says which way it runs. Write "width" or "length".',
    ],
  },
  {
    title: 'direction against the landmark',
    path: 'pattern.measurements[0].direction',
    value: 'length',
    says: [
      'pattern.measurements[0].direction: the landmark "chest" runs along the width (given: "length"). Leave the direction out, or use a landmark of your own.',
    ],
  },
  {
    title: 'a length that goes around',
    path: 'pattern.measurements[1].span',
    value: 'around',
    says: [
      'pattern.measurements[1].span: "Length" is measured across one layer or along the length; it does not go around (given: "around"). Leave the span out.',
    ],
  },
  {
    title: 'gauge over an inch',
    path: 'pattern.gauge.stitches',
    value: 2000,
    says: [
      'pattern.gauge.stitches: 2000 over 100 mm (3.9 in) makes each 0.05 mm, which nothing knit can be (given: 2000). Check the count and the length that it was taken over; a stitch or row goes from 0.3 to 100 mm.',
      "pattern.measurements[0].counts[0]: 180 at the pattern's gauge make 9 mm (0.4 in), but the pattern says 900 mm (35.4 in) (given: 180). Check both for a misprint, and whether one is flat and the other around.",
    ],
  },
  {
    title: 'gauge too coarse',
    path: 'pattern.gauge.rows',
    value: 1,
    says: [
      'pattern.gauge.rows: 1 over 100 mm (3.9 in) makes each 100 mm, which no hand knitting is (given: 1). Check the count and the length that it was taken over.',
    ],
  },
  {
    title: 'counts of half the girth',
    path: 'pattern.measurements[0].counts',
    value: [90, 100, 110],
    says: [
      "pattern.measurements[0].counts[0]: 90 at the pattern's gauge make 450 mm (17.7 in), but the pattern says 900 mm (35.4 in) (given: 90). Check both for a misprint, and whether one is flat and the other around.",
    ],
  },
  {
    title: 'girth without a span',
    path: 'pattern.measurements[0].span',
    value: undefined,
    says: [
      'pattern.measurements[0].span: "Chest" is left out until you say whether 1000 mm (39.4 in) is flat or around. Write "flat" or "around"; it reads like around.',
    ],
  },
  {
    title: 'girth that reads like flat',
    path: 'pattern.measurements[0].values',
    value: [450, 500, 550],
    says: [
      "pattern.measurements[0].counts[0]: 180 at the pattern's gauge make 900 mm (35.4 in), but the pattern says 450 mm (17.7 in) (given: 180). Check both for a misprint, and whether one is flat and the other around.",
      'pattern.measurements[0].span: 500 mm (19.7 in) of "Chest" reads like flat: taken as around the garment goes 500 mm (19.7 in) around, taken as flat it goes 1000 mm (39.4 in) (given: "around"). Write "flat" if that is meant; leave it if not.',
    ],
  },
  {
    title: 'girth said flat that reads like around',
    path: 'pattern.measurements[0].span',
    value: 'flat',
    says: [
      'pattern.measurements[0].span: 1000 mm (39.4 in) of "Chest" reads like around: taken as flat the garment goes 2000 mm (78.7 in) around, taken as around it goes 1000 mm (39.4 in) (given: "flat"). Write "around" if that is meant; leave it if not.',
    ],
  },
  {
    title: 'a size that lost a digit',
    path: 'pattern.measurements[1].values',
    value: [560, 58, null],
    says: [
      'pattern.measurements[1].values[1]: it jumps from 560 mm (22 in) to 58 mm (2.3 in) between two sizes (given: 58). Check both for a misprint or a slip of unit.',
    ],
  },
  {
    title: 'a size that lost a digit, after a gap',
    path: 'pattern.measurements[2].values',
    value: [120, null, 13],
    says: [
      'pattern.measurements[2].values[2]: it jumps from 120 mm (4.7 in) to 13 mm (0.5 in) between two sizes (given: 13). Check both for a misprint or a slip of unit.',
    ],
  },
  {
    title: 'a girth far from the body',
    path: 'pattern.measurements[0].values',
    value: [3700, 4000, 4400],
    says: [
      "pattern.measurements[0].counts[0]: 180 at the pattern's gauge make 900 mm (35.4 in), but the pattern says 3700 mm (145.7 in) (given: 180). Check both for a misprint, and whether one is flat and the other around.",
      'pattern.measurements[0]: "Chest" of 4000 mm (157.5 in) around is far from the body\'s 914 mm (36 in) (given: 4000). Check the number and its unit.',
      'pieces[0].measured[0]: "Chest" of 980 mm (38.6 in) around is far from the pattern\'s 4000 mm (157.5 in) (given: 490). Check the number and its unit.',
    ],
  },
  {
    title: 'twenty inches for a body of thirty-six',
    path: 'pattern.measurements[0]',
    value: {
      id: 'chest',
      name: 'Chest',
      landmark: 'chest',
      worked: 'counted',
      values: [457.2, 508, 558.8],
    },
    says: [
      'pattern.measurements[0].span: "Chest" is left out until you say whether 508 mm (20 in) is flat or around. Write "flat" or "around"; it reads like flat.',
    ],
  },
];
