import type { MalformedCase } from './malformed-case.ts';

/** Records of the right shape that say what cannot be, or is unlikely: yarns, evidence, plan and past. */
export const SENSE_OF_THE_REST: readonly MalformedCase[] = [
  {
    title: 'duplicate reading id',
    path: 'evidence[0].readings[1].id',
    value: 'a',
    says: [
      'evidence[0].readings[1].id: this id is taken by evidence[0].readings[0].id (given: "a"). Give it an id of its own.',
    ],
  },
  {
    title: 'duplicate tape id over pieces and outcomes',
    path: 'outcomes[0].measured[0].id',
    value: 'm1',
    says: [
      'outcomes[0].measured[0].id: this id is taken by pieces[0].measured[0].id (given: "m1"). Give it an id of its own.',
    ],
  },
  {
    title: 'tape of a measurement that is not there',
    path: 'pieces[0].measured[0].measurement',
    value: 'chst',
    says: [
      'pieces[0].measured[0].measurement: the pattern has no measurement of this id (given: "chst"). Use "chest", or add the measurement to the pattern.',
    ],
  },
  {
    title: 'pin of a measurement that is not there',
    path: 'plan.pinTo[0].measurement',
    value: 'sleeve',
    says: [
      'plan.pinTo[0].measurement: the pattern has no measurement of this id (given: "sleeve"). Use one of chest, length, pocket.',
    ],
  },
  {
    title: 'tape without a span',
    path: 'pieces[0].measured[0].span',
    value: undefined,
    says: [
      'pieces[0].measured[0].span: 490 mm (19.3 in) of "Chest" is left out until you say whether it is flat or around. Write "flat" or "around"; it reads like flat.',
    ],
  },
  {
    title: 'tape said around that reads like flat',
    path: 'pieces[0].measured[0].span',
    value: 'around',
    says: [
      'pieces[0].measured[0].span: 490 mm (19.3 in) of "Chest" reads like flat: taken as around the garment goes 490 mm (19.3 in) around, taken as flat it goes 980 mm (38.6 in) (given: "around"). Write "flat" if that is meant; leave it if not.',
    ],
  },
  {
    title: 'shares of 90',
    path: 'yarns[0].fibres[1].percent',
    value: 10,
    says: [
      'yarns[0].fibres: the shares make 90 %, not 100 % (given: "90 %"). Correct the shares, or add the fibre that is missing ("other" if it is not listed).',
    ],
  },
  {
    title: 'fibre twice',
    path: 'yarns[0].fibres[1].fibre',
    value: 'wool',
    says: [
      'yarns[0].fibres[1].fibre: this fibre is named twice (given: "wool"). Add the two shares into one.',
    ],
  },
  {
    title: 'superwash without wool',
    path: 'yarns[0]',
    value: {
      id: 'main',
      name: '',
      fibres: [{ fibre: 'cotton', percent: 100 }],
      treatment: 'superwash',
      lots: [],
    },
    says: [
      'yarns[0].treatment: superwash is a treatment of wool, and there is no wool in this yarn (given: "superwash"). Write "untreated", or add the wool.',
    ],
  },
  {
    title: 'metres of a kilometre',
    path: 'yarns[0].metresPer100g',
    value: 22000,
    says: [
      'yarns[0].metresPer100g: 22000 m in 100 g is no usual yarn (given: 22000). Check whether it is metres, and in 100 g rather than in a skein.',
    ],
  },
  {
    title: 'less than one stitch',
    path: 'evidence[0].readings[0].count',
    value: 0.5,
    says: [
      'evidence[0].readings[0].count: less than one stitch or row was counted (given: 0.5). Count over a longer stretch.',
    ],
  },
  {
    title: '200 stitches over an inch',
    path: 'evidence[0].readings[0]',
    value: {
      kind: 'count',
      id: 'a',
      direction: 'width',
      count: 200,
      overMm: 25.4,
      state: 'dried',
      pinned: false,
      read: 'flat',
    },
    says: [
      'evidence[0].readings[0].count: 200 over 25.4 mm (1 in) makes each 0.127 mm, which nothing knit can be (given: 200). Check the count and the length that it was taken over; a stitch or row goes from 0.3 to 100 mm.',
    ],
  },
  {
    title: 'as knit, and dried on pins',
    path: 'evidence[0].readings[1].pinned',
    value: true,
    says: [
      'evidence[0].readings[1].pinned: only what was dried can have dried on pins (given: "true"). Give "dried" as its state, or say nothing of pins.',
    ],
  },
  {
    title: 'dried, of a swatch that was pinned, and nobody says on pins or not',
    path: 'evidence[0].readings[0].pinned',
    value: undefined,
    says: [
      'evidence[0].readings[0].pinned: "Swatch" was pinned, and nothing says whether this was read of it dried so or laid flat; it may be either, and counts for little until you do. Say whether it dried on pins or was laid flat since.',
    ],
  },
  {
    title: 'counted over more than the swatch',
    path: 'evidence[0].readings[0].overMm',
    value: 1000,
    says: [
      'evidence[0].readings[0].overMm: it was counted over 1000 mm (39.4 in), but "Swatch" is only 180 mm (7.1 in) there (given: 1000). Check both lengths and the direction.',
    ],
  },
  {
    title: 'shorter under load',
    path: 'evidence[0].readings[2].afterMm',
    value: 140,
    says: [
      'evidence[0].readings[2].afterMm: with a weight on it went from 150 mm (5.9 in) to 140 mm (5.5 in): nothing gets shorter so (given: 140). Check whether the two are swapped.',
    ],
  },
  {
    title: 'pinned shorter than at rest',
    path: 'evidence[0].readings[3].pinnedMm',
    value: 140,
    says: [
      'evidence[0].readings[3].pinnedMm: it was pinned to 140 mm (5.5 in), shorter than its 150 mm (5.9 in) at rest (given: 140). Check whether the two are swapped.',
      'evidence[0].readings[3].driedMm: it dried to 160 mm (6.3 in), longer than the 140 mm (5.5 in) that it was pinned to (given: 160). Check whether the two are swapped.',
    ],
  },
  {
    title: 'dried in a swatch never washed',
    path: 'evidence[0].washed',
    value: 'not',
    says: [
      'evidence[0].readings[0].state: "Swatch" was never washed, so it was never dried after a wash (given: "dried"). Say how it was washed, or write "asKnit" for a reading before the first wash.',
      'evidence[0].readings[2].state: "Swatch" was never washed, so it was never dried after a wash (given: "dried"). Say how it was washed, or write "asKnit" for a reading before the first wash.',
      'evidence[0].readings[3].kind: "Swatch" was never washed, so it was never dried after a wash (given: "set"). Say how it was washed, or write "asKnit" for a reading before the first wash.',
    ],
  },
  {
    title: 'needle by its number',
    path: 'needleMm',
    value: 0.2,
    says: [
      'needleMm: nothing in knitting comes to this (given: 0.2). Check the number and its unit; it goes from 0.3 to 100 mm.',
    ],
  },
  {
    title: 'mass in kilograms',
    path: 'massG',
    value: 0.4,
    says: [
      'massG: a garment of 0.4 g is not to be expected (given: 0.4). Write the mass of the whole garment in grams.',
    ],
  },
  {
    title: 'a piece that is worn',
    path: 'pieces[0].measured[0].state',
    value: 'worn',
    says: [
      'pieces[0].measured[0].state: "Back" is a piece, and a piece is not worn (given: "worn"). Write the state it was measured in, or move the number to an outcome.',
    ],
  },
  {
    title: 'pins where none are used',
    path: 'plan.drying',
    value: 'lay',
    says: [
      'plan.pinTo: the plan lays the garment flat without pins, and says what to pin it to (given: "length"). Write "pin" as the drying, or leave pinTo empty.',
    ],
  },
  {
    title: 'percentiles out of order',
    path: 'forecasts[0].measurements[0].p50Mm',
    value: 1100,
    says: [
      'forecasts[0].measurements[0]: the 5th, 50th and 95th percentiles do not rise (given: "950, 1100, 1050"). Put them in order.',
    ],
  },
  {
    title: 'rewashed without a wash',
    path: 'outcomes[0]',
    value: {
      id: 'o',
      washes: 0,
      remark: '',
      measured: [{ id: 'm2', measurement: 'length', state: 'rewashed', mm: 585 }],
    },
    says: [
      'outcomes[0].measured[0].state: the outcome counts no wash, so nothing was washed again (given: "rewashed"). Count the washes, or write the state it was measured in.',
    ],
  },
  {
    title: 'a tape far from the pattern',
    path: 'pieces[0].measured[0].mm',
    value: 49,
    says: [
      'pieces[0].measured[0]: "Chest" of 98 mm (3.9 in) around is far from the pattern\'s 1000 mm (39.4 in) (given: 49). Check the number and its unit.',
    ],
  },
  {
    title: 'shares of three fibres, one left out',
    path: 'yarns[0].fibres',
    value: [
      { fibre: 'wool', percent: 60 },
      { fibre: 'silk', percent: 30 },
    ],
    says: [
      'yarns[0].fibres: the shares make 90 %, not 100 % (given: "90 %"). Correct the shares, or add the fibre that is missing ("other" if it is not listed).',
    ],
  },
];
