import type { MalformedCase } from './malformed-case.ts';

/** Records of the wrong shape: the garment, its plan and its past. */
export const SHAPE_OF_GARMENT: readonly MalformedCase[] = [
  {
    title: 'missing id',
    path: 'id',
    value: undefined,
    says: ['id: it is missing. Add it: a short id.'],
  },
  {
    title: 'empty id',
    path: 'id',
    value: '',
    says: ['id: it is empty (given: ""). Write at least one letter or digit.'],
  },
  {
    title: 'name too long',
    path: 'name',
    value: 'x'.repeat(201),
    says: [
      'name: it is longer than 200 letters (given: "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…). Shorten it to 200 letters.',
    ],
  },
  {
    title: 'name is a number',
    path: 'name',
    value: 12,
    says: ['name: it is a number, but a text belongs here (given: 12). Write a text.'],
  },
  {
    title: 'kind misspelled',
    path: 'kind',
    value: 'pulover-set-in',
    says: [
      'kind: it is none of the choices here (given: "pulover-set-in"). Write "pullover-set-in", or another of "pullover-drop-shoulder", "pullover-set-in", "pullover-raglan", "pullover-yoke", "cardigan-drop-shoulder", "cardigan-set-in", "cardigan-raglan", "cardigan-yoke", "vest", "top", "hat", "sock", "mitten", "shawl-triangle", "shawl-rectangle", "shawl-half-round", "blanket", "other".',
    ],
  },
  {
    title: 'kind unknown',
    path: 'kind',
    value: 'balaclava',
    says: [
      'kind: it is none of the choices here (given: "balaclava"). Write one of "pullover-drop-shoulder", "pullover-set-in", "pullover-raglan", "pullover-yoke", "cardigan-drop-shoulder", "cardigan-set-in", "cardigan-raglan", "cardigan-yoke", "vest", "top", "hat", "sock", "mitten", "shawl-triangle", "shawl-rectangle", "shawl-half-round", "blanket", "other".',
    ],
  },
  {
    title: 'stitch missing',
    path: 'stitch',
    value: undefined,
    says: [
      'stitch: it is missing. Add it: one of "stockinette", "garter", "rib-1x1", "seed", "lace", "cables", "colourwork", "other".',
    ],
  },
  {
    title: 'needle as text',
    path: 'needleMm',
    value: '4',
    says: [
      'needleMm: it is a text, but a length in millimetres belongs here (given: "4"). Write it without quotes: 4.',
    ],
  },
  {
    title: 'needle as text with a unit',
    path: 'needleMm',
    value: '4 mm',
    says: [
      'needleMm: it is a text, but a length in millimetres belongs here (given: "4 mm"). Write a length in millimetres.',
    ],
  },
  {
    title: 'needle zero',
    path: 'needleMm',
    value: 0,
    says: [
      'needleMm: a length in millimetres must be more than 0 (given: 0). Give a length in millimetres of more than 0.',
    ],
  },
  {
    title: 'mass null',
    path: 'massG',
    value: null,
    says: [
      'massG: it is null, but a mass in grams belongs here (given: null). Write a mass in grams.',
    ],
  },
  {
    title: 'key misspelled at the root',
    path: 'needelMm',
    value: 4,
    says: [
      'needelMm: there is no field of this name here (given: 4). Rename it to "needleMm", or remove it.',
    ],
  },
  {
    title: 'key unknown at the root',
    path: 'colour',
    value: 'red',
    says: [
      'colour: there is no field of this name here (given: "red"). Remove it; the fields here are format, version, id, name, kind, stitch, needleMm, massG, wearer, pattern, yarns, evidence, pieces, plan, forecasts, outcomes, notes, onMat, dryings, photos, finished, people, pace, progress, left, instructions, report.',
    ],
  },
  {
    title: 'key of a prototype',
    path: 'constructor',
    value: 1,
    says: [
      'constructor: there is no field of this name here (given: 1). Remove it; the fields here are format, version, id, name, kind, stitch, needleMm, massG, wearer, pattern, yarns, evidence, pieces, plan, forecasts, outcomes, notes, onMat, dryings, photos, finished, people, pace, progress, left, instructions, report.',
    ],
  },
  {
    title: 'piece without measurements',
    path: 'pieces[0].measured',
    value: undefined,
    says: ['pieces[0].measured: it is missing. Add it: a list in [ ].'],
  },
  {
    title: 'day of no month',
    path: 'pieces[0].measured[0].on',
    value: '2031-13-02',
    says: [
      'pieces[0].measured[0].on: it is not a day like 2031-04-09 (given: "2031-13-02"). Write a day like 2031-04-09.',
    ],
  },
  {
    title: 'day in another order',
    path: 'plan.finishBy',
    value: '03.02.2031',
    says: [
      'plan.finishBy: it is not a day like 2031-04-09 (given: "03.02.2031"). Write a day like 2031-04-09.',
    ],
  },
  {
    title: 'day is a number',
    path: 'plan.finishBy',
    value: 2031,
    says: [
      'plan.finishBy: it is a number, but a day like 2031-04-09 belongs here (given: 2031). Write a day like 2031-04-09.',
    ],
  },
  {
    title: 'washing missing',
    path: 'plan.washing',
    value: undefined,
    says: [
      'plan.washing: it is missing. Add it: one of "by-hand", "machine-wool", "machine-warm", "not-said".',
    ],
  },
  {
    title: 'drying unknown',
    path: 'plan.drying',
    value: 'tumble',
    says: [
      'plan.drying: it is none of the choices here (given: "tumble"). Write one of "lay", "pin".',
    ],
  },
  {
    title: 'plan key misspelled',
    path: 'plan.dryng',
    value: 'pin',
    says: [
      'plan.dryng: there is no field of this name here (given: "pin"). Rename it to "drying", or remove it.',
    ],
  },
  {
    title: 'judged at a state not forecast',
    path: 'plan.judgeAt',
    value: 'wet',
    says: [
      'plan.judgeAt: it is none of the choices here (given: "wet"). Write one of "dried", "worn", "rewashed".',
    ],
  },
  {
    title: 'washes negative',
    path: 'outcomes[0].washes',
    value: -1,
    says: [
      'outcomes[0].washes: a whole number of washes must be at least 0 (given: -1). Give a whole number of washes of at least 0.',
    ],
  },
  {
    title: 'washes with a fraction',
    path: 'outcomes[0].washes',
    value: 1.5,
    says: [
      'outcomes[0].washes: it is a number with a fraction, but a whole number of washes belongs here (given: 1.5). Write a whole number of washes.',
    ],
  },
  {
    title: 'forecast without a day',
    path: 'forecasts[0].on',
    value: undefined,
    says: ['forecasts[0].on: it is missing. Add it: a day like 2031-04-09.'],
  },
  {
    title: 'a note is a text',
    path: 'notes[0]',
    value: 'A note.',
    says: [
      'notes[0]: it is a text, but a group of fields in { } belongs here (given: "A note."). Write a group of fields in { }.',
    ],
  },
];
