import type { MalformedCase } from './malformed-case.ts';

/** Records of the wrong shape: yarns and evidence. */
export const SHAPE_OF_YARNS_EVIDENCE: readonly MalformedCase[] = [
  {
    title: 'fibre misspelled',
    path: 'yarns[0].fibres[0].fibre',
    value: 'wol',
    says: [
      'yarns[0].fibres[0].fibre: it is none of the choices here (given: "wol"). Write "wool", or another of "wool", "alpaca", "mohair", "cashmere", "silk", "cotton", "linen", "hemp", "viscose", "lyocell", "acrylic", "nylon", "polyester", "other".',
    ],
  },
  {
    title: 'share over 100',
    path: 'yarns[0].fibres[0].percent',
    value: 180,
    says: [
      'yarns[0].fibres[0].percent: a share in percent must be at most 100 (given: 180). Give a share in percent of at most 100.',
    ],
  },
  {
    title: 'treatment unknown',
    path: 'yarns[0].treatment',
    value: 'shrinkproof',
    says: [
      'yarns[0].treatment: it is none of the choices here (given: "shrinkproof"). Write one of "untreated", "superwash", "unknown".',
    ],
  },
  {
    title: 'weight class with a fraction',
    path: 'yarns[0].weightClass',
    value: 3.5,
    says: [
      'yarns[0].weightClass: it is a number with a fraction, but a whole yarn weight class belongs here (given: 3.5). Write a whole yarn weight class.',
    ],
  },
  {
    title: 'weight class too high',
    path: 'yarns[0].weightClass',
    value: 9,
    says: [
      'yarns[0].weightClass: a whole yarn weight class must be at most 7 (given: 9). Give a whole yarn weight class of at most 7.',
    ],
  },
  {
    title: 'lot key misspelled',
    path: 'yarns[0].lots[0].gramEach',
    value: 50,
    says: [
      'yarns[0].lots[0].gramEach: there is no field of this name here (given: 50). Rename it to "gramsEach", or remove it.',
    ],
  },
  {
    title: 'reading of unknown kind',
    path: 'evidence[0].readings[0].kind',
    value: 'photo',
    says: [
      'evidence[0].readings[0].kind: it is none of the choices here (given: "photo"). Write one of "count", "extent", "hang", "set".',
    ],
  },
  {
    title: 'reading without a count',
    path: 'evidence[0].readings[0].count',
    value: undefined,
    says: ['evidence[0].readings[0].count: it is missing. Add it: a count.'],
  },
  {
    title: 'reading with a negative count',
    path: 'evidence[0].readings[0].count',
    value: -20,
    says: [
      'evidence[0].readings[0].count: a count must be more than 0 (given: -20). Give a count of more than 0.',
    ],
  },
  {
    title: 'reading state unknown',
    path: 'evidence[0].readings[0].state',
    value: 'blocked',
    says: [
      'evidence[0].readings[0].state: it is none of the choices here (given: "blocked"). Write one of "asKnit", "wet", "dried", "rewashed".',
    ],
  },
  {
    title: 'reading read in another way',
    path: 'evidence[0].readings[0].read',
    value: 'pulled',
    says: [
      'evidence[0].readings[0].read: it is none of the choices here (given: "pulled"). Write one of "flat", "stretched".',
    ],
  },
  {
    title: 'a count reading with the key of another',
    path: 'evidence[0].readings[0].massG',
    value: 3,
    says: [
      'evidence[0].readings[0].massG: there is no field of this name here (given: 3). Remove it; the fields here are kind, id, direction, count, overMm, state, pinned, read, place.',
    ],
  },
  {
    title: 'reading is null',
    path: 'evidence[0].readings[1]',
    value: null,
    says: [
      'evidence[0].readings[1]: it is null, but a group of fields in { } belongs here (given: null). Write a group of fields in { }.',
    ],
  },
  {
    title: 'worked-as-garment is a text',
    path: 'evidence[0].workedAsGarment',
    value: 'yes',
    says: [
      'evidence[0].workedAsGarment: it is a text, but true or false belongs here (given: "yes"). Write true or false.',
    ],
  },
  {
    title: 'washed unknown',
    path: 'evidence[0].washed',
    value: 'yes',
    says: [
      'evidence[0].washed: it is none of the choices here (given: "yes"). Write one of "not", "as-garment", "otherwise".',
    ],
  },
];
