import type { MalformedCase } from './malformed-case.ts';

/** Records of the right shape that say what cannot be, or is unlikely: the mat, pins, drying and photos. */
export const SENSE_OF_MAT: readonly MalformedCase[] = [
  {
    title: 'telling twice',
    path: 'onMat[0].told',
    value: [
      {
        id: 't',
        step: 1,
        at: '2031-01-05T10:05:00Z',
        tapeMm: [102, null],
        felt: 'right',
        measured: [{ landmark: 'chest', mm: 490 }],
      },
      {
        id: 't',
        step: 1,
        at: '2031-01-05T10:05:00Z',
        tapeMm: [102, null],
        felt: 'right',
        measured: [{ landmark: 'chest', mm: 490 }],
      },
    ],
    says: [
      'onMat[0].told[1].id: this id is taken by onMat[0].told[0].id (given: "t"). Give it an id of its own.',
    ],
  },
  {
    title: 'shown step beyond the last',
    path: 'onMat[0].at',
    value: 4,
    says: ['onMat[0].at: there are 3 steps (given: 4). Write a number from 0 to 3.'],
  },
  {
    title: 'told of a step that is not there',
    path: 'onMat[0].told[0].step',
    value: 3,
    says: [
      'onMat[0].told[0].step: there are 3 steps, counted from 0 (given: 3). Write the ordinal of the step that the tape was held at.',
    ],
  },
  {
    title: 'tape read in inches',
    path: 'onMat[0].told[0].tapeMm[0]',
    value: 4,
    says: [
      'onMat[0].told[0].tapeMm[0]: the tape says 4 mm (0.2 in) where the plan has 100 mm (3.9 in) (given: 4). Check the number, its unit, and which of the two distances it is.',
    ],
  },
  {
    title: 'tape of the other distance',
    path: 'onMat[0].told[0].tapeMm[1]',
    value: 1020,
    says: [
      'onMat[0].told[0].tapeMm[1]: the tape says 1020 mm (40.2 in) where the plan has 400 mm (15.7 in) (given: 1020). Check the number, its unit, and which of the two distances it is.',
    ],
  },
  {
    title: 'pinned before it was begun',
    path: 'onMat[0].pinned',
    value: '2031-01-05T09:00:00Z',
    says: [
      'onMat[0].pinned: the last pin was in before the first: it was begun at 2031-01-05T10:00:00Z (given: "2031-01-05T09:00:00Z"). Correct one of the two.',
    ],
  },
  {
    title: 'a T-pin more out than in',
    path: 'onMat[0].out.tPins',
    value: 2,
    says: [
      'onMat[0].out: more came out than the 5 straight pins, 1 T-pin, 1 wire that went in: 1 T-pin too many (given: "4 straight pins, 2 T-pins, 1 wire"). Count again, or enter pins that went in beside the plan as extra.',
    ],
  },
  {
    title: 'more of several kinds out than in',
    path: 'onMat[0].out',
    value: { straight: 5, tPins: 1, combs: 2, wires: 2 },
    says: [
      'onMat[0].out: more came out than the 5 straight pins, 1 T-pin, 1 wire that went in: 2 combs, 1 wire too many (given: "5 straight pins, 1 T-pin, 2 combs, 2 wires"). Count again, or enter pins that went in beside the plan as extra.',
      'finished.missing: more are said to be missing than are: 1 straight pin too many (given: "1 straight pin"). Count again what went in and what came out.',
    ],
  },
  {
    title: 'finished with the wire still in',
    path: 'onMat[0].out.wires',
    value: 0,
    says: [
      'finished.missing: 1 wire went in and did not come out (given: "1 straight pin"). Look for them in the fabric and the mat, and count them out; what stays lost, say in finished.missing.',
    ],
  },
  {
    title: 'finished before unpinning',
    path: 'onMat[0].out',
    value: undefined,
    says: [
      'finished.missing: 4 straight pins, 1 T-pin, 1 wire went in and did not come out (given: "1 straight pin"). Look for them in the fabric and the mat, and count them out; what stays lost, say in finished.missing.',
    ],
  },
  {
    title: 'finished with a pin that nobody missed',
    path: 'finished.missing',
    value: undefined,
    says: [
      'finished.missing: 1 straight pin went in and did not come out (given: "no pins"). Look for them in the fabric and the mat, and count them out; what stays lost, say in finished.missing.',
    ],
  },
  {
    title: 'a pin said to be missing that is not',
    path: 'finished.missing.straight',
    value: 3,
    says: [
      'finished.missing: more are said to be missing than are: 2 straight pins too many (given: "3 straight pins"). Count again what went in and what came out.',
    ],
  },
  {
    title: 'wet no heavier than dry',
    path: 'dryings[0].wet',
    value: 400,
    says: [
      'dryings[0].wet: after pressing it weighs 400 g, no more than the 400 g before the wash (given: 400). Weigh both again, with all pieces and without the towel, or check whether they are swapped.',
      'dryings[0].weighings[0].massG: it weighs 560 g, more than the 400 g after pressing (given: 560). Weigh it again; if it was wetted anew, begin a new drying.',
    ],
  },
  {
    title: 'thick places are all of it',
    path: 'dryings[0].thick[0].share',
    value: 0.9,
    says: [
      'dryings[0].thick: the thick places are the whole garment (given: "100 %"). Give each its share of the mass, less than 100 % together.',
    ],
  },
  {
    title: 'thick place twice',
    path: 'dryings[0].thick[1].id',
    value: 'a',
    says: [
      'dryings[0].thick[1].id: this id is taken by dryings[0].thick[0].id (given: "a"). Give it an id of its own.',
    ],
  },
  {
    title: 'weighed before it was laid out',
    path: 'dryings[0].weighings[0].at',
    value: '2031-01-04T18:30:00Z',
    says: [
      'dryings[0].weighings[0].at: it was only laid out at 2031-01-05T10:30:00Z (given: "2031-01-04T18:30:00Z"). Correct one of the two, or enter it with the drying that it belongs to.',
    ],
  },
  {
    title: 'felt before it was laid out',
    path: 'dryings[0].touches[0].at',
    value: '2030-01-06T08:00:00Z',
    says: [
      'dryings[0].touches[0].at: it was only laid out at 2031-01-05T10:30:00Z (given: "2030-01-06T08:00:00Z"). Correct one of the two, or enter it with the drying that it belongs to.',
    ],
  },
  {
    title: 'turned before it was laid out',
    path: 'dryings[0].turned[0]',
    value: '2031-01-05T10:29:00Z',
    says: [
      'dryings[0].turned[0]: it was only laid out at 2031-01-05T10:30:00Z (given: "2031-01-05T10:29:00Z"). Correct one of the two, or enter it with the drying that it belongs to.',
    ],
  },
  {
    title: 'dry before it was laid out',
    path: 'dryings[0].dried',
    value: '2031-01-05T08:00:00Z',
    says: [
      'dryings[0].dried: it was only laid out at 2031-01-05T10:30:00Z (given: "2031-01-05T08:00:00Z"). Correct one of the two, or enter it with the drying that it belongs to.',
    ],
  },
  {
    title: 'gained weight while drying',
    path: 'dryings[0].weighings[0].massG',
    value: 707,
    says: [
      'dryings[0].weighings[0].massG: it weighs 707 g, more than the 700 g after pressing (given: 707). Weigh it again; if it was wetted anew, begin a new drying.',
    ],
  },
  {
    title: 'lighter than it can be',
    path: 'dryings[0].weighings[0].massG',
    value: 320,
    says: [
      'dryings[0].weighings[0].massG: it weighs 320 g, far less than the 400 g before the wash (given: 320). Weigh it again with all its pieces, or correct the mass before the wash.',
    ],
  },
  {
    title: 'photo of another type',
    path: 'photos[0].type',
    value: 'image/webp',
    says: ['photos[0].type: its data begin as image/png (given: "image/webp"). Write "image/png".'],
  },
  {
    title: 'photo that is none',
    path: 'photos[0].data',
    value: 'SGVsbG8sIHdvcmxkIQ==',
    says: [
      'photos[0].type: its data do not begin as a picture of any type here (given: "image/png"). Attach the photo again.',
    ],
  },
  {
    title: 'photo without data',
    path: 'photos[0].data',
    value: '',
    says: [
      'photos[0].type: its data do not begin as a picture of any type here (given: "image/png"). Attach the photo again.',
    ],
  },
  {
    title: 'photo cut off in its header',
    path: 'photos[0].data',
    value: 'iVBORw==',
    says: [
      'photos[0].type: its data do not begin as a picture of any type here (given: "image/png"). Attach the photo again.',
    ],
  },
  {
    title: 'photo cut off behind its header',
    path: 'photos[0].data',
    value: 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAAB',
    says: [
      'photos[0].data: it begins as a picture, but is not a whole one, so that it goes into no report and no file (given: "iVBORw0KGgoAAAANSUhEUgAA…"). Attach the photo again, or remove it.',
    ],
  },
];
