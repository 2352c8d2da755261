import type { MalformedCase } from './malformed-case.ts';

/** Records of the wrong shape: the mat, drying, and what bears on what to do next. */
export const SHAPE_OF_WORK: readonly MalformedCase[] = [
  {
    title: 'a mat step of unknown kind',
    path: 'onMat[0].steps[0].kind',
    value: 't pin',
    says: [
      'onMat[0].steps[0].kind: it is none of the choices here (given: "t pin"). Write "t-pin", or another of "straight", "t-pin", "comb", "wire".',
    ],
  },
  {
    title: 'a step with one distance',
    path: 'onMat[0].steps[1].from',
    value: [{ name: 'left of the mat', mm: 100 }],
    says: [
      'onMat[0].steps[1].from: the list must have exactly 2 entries (given: [{"name":"left of the mat","mm":100}]). Give exactly 2 entries.',
    ],
  },
  {
    title: 'a step done in another way',
    path: 'onMat[0].steps[0].done',
    value: 'out',
    says: [
      'onMat[0].steps[0].done: it is none of the choices here (given: "out"). Write one of "in", "passed".',
    ],
  },
  {
    title: 'eight days in a week',
    path: 'pace.hours',
    value: [0, 1, 1, 0, 0, 3, 1, 1],
    says: [
      'pace.hours: the list must have exactly 7 entries (given: [0,1,1,0,0,3,1,1]). Give exactly 7 entries.',
    ],
  },
  {
    title: 'layers missing',
    path: 'dryings[0].layers',
    value: undefined,
    says: ['dryings[0].layers: it is missing. Add it: one of 1, 2.'],
  },
  {
    title: 'wet negative',
    path: 'dryings[0].wet',
    value: -3,
    says: [
      'dryings[0].wet: a mass in grams must be more than 0 (given: -3). Give a mass in grams of more than 0.',
    ],
  },
  {
    title: 'dry air of 100 percent',
    path: 'dryings[0].dry.air',
    value: 100,
    says: [
      'dryings[0].dry.air: a relative humidity in percent must be less than 100 (given: 100). Give a relative humidity in percent of less than 100.',
    ],
  },
  {
    title: 'three layers',
    path: 'onMat[0].layers',
    value: 3,
    says: ['onMat[0].layers: it is none of the choices here (given: 3). Write one of 1, 2.'],
  },
  {
    title: 'begun on a day without a time',
    path: 'onMat[0].begun',
    value: '2031-01-05',
    says: [
      'onMat[0].begun: it is not a moment like 2031-04-09T18:30:00Z (given: "2031-01-05"). Write a moment like 2031-04-09T18:30:00Z.',
    ],
  },
  {
    title: 'a moment without its zone',
    path: 'dryings[0].begun',
    value: '2031-01-05T10:30:00',
    says: [
      'dryings[0].begun: it is not a moment like 2031-04-09T18:30:00Z (given: "2031-01-05T10:30:00"). Write a moment like 2031-04-09T18:30:00Z.',
    ],
  },
  {
    title: 'pins in halves',
    path: 'onMat[0].out.tPins',
    value: 1.5,
    says: [
      'onMat[0].out.tPins: it is a number with a fraction, but a whole number belongs here (given: 1.5). Write a whole number.',
    ],
  },
  {
    title: 'felt in another way',
    path: 'onMat[0].told[0].felt',
    value: 'hard',
    says: [
      'onMat[0].told[0].felt: it is none of the choices here (given: "hard"). Write one of "right", "at-limit", "slack".',
    ],
  },
  {
    title: 'wet in words of no meaning',
    path: 'dryings[0].wet',
    value: 'damp',
    says: [
      'dryings[0].wet: it is none of the choices here (given: "damp"). Write a mass in grams, or one of "towel", "spun", "dripping".',
    ],
  },
  {
    title: 'humidity of 100',
    path: 'dryings[0].air.humidityPercent',
    value: 100,
    says: [
      'dryings[0].air.humidityPercent: a relative humidity in percent must be less than 100 (given: 100). Give a relative humidity in percent of less than 100.',
    ],
  },
  {
    title: 'temperature of an oven',
    path: 'dryings[0].air.temperatureC',
    value: 90,
    says: [
      'dryings[0].air.temperatureC: a temperature in °C must be at most 45 (given: 90). Give a temperature in °C of at most 45.',
    ],
  },
  {
    title: 'dried on a radiator',
    path: 'dryings[0].on',
    value: 'radiator',
    says: [
      'dryings[0].on: it is none of the choices here (given: "radiator"). Write one of "mat", "rack".',
    ],
  },
  {
    title: 'dry air in words of no meaning',
    path: 'dryings[0].dry.air',
    value: 'outside',
    says: [
      'dryings[0].dry.air: it is none of the choices here (given: "outside"). Write a relative humidity in percent, or one of "here", "label".',
    ],
  },
  {
    title: 'weighing without its mass',
    path: 'dryings[0].weighings[0].massG',
    value: undefined,
    says: ['dryings[0].weighings[0].massG: it is missing. Add it: a mass in grams.'],
  },
  {
    title: 'photo of a type not kept',
    path: 'photos[0].type',
    value: 'image/gif',
    says: [
      'photos[0].type: it is none of the choices here (given: "image/gif"). Write "image/png", or another of "image/jpeg", "image/webp", "image/png".',
    ],
  },
  {
    title: 'photo that is no base64',
    path: 'photos[0].data',
    value: 'http://photo',
    says: [
      'photos[0].data: it is not a picture in base64 (given: "http://photo"). Write a picture in base64.',
    ],
  },
  {
    title: 'finished without a day',
    path: 'finished.on',
    value: undefined,
    says: ['finished.on: it is missing. Add it: a day like 2031-04-09.'],
  },
  {
    title: 'person of group nobody',
    path: 'people[0].group',
    value: 'nobody',
    says: [
      'people[0].group: it is none of the choices here (given: "nobody"). Write one of "woman", "man", "child", "baby".',
    ],
  },
  {
    title: 'six days in a week',
    path: 'pace.hours',
    value: [0, 1, 1, 0, 0, 3],
    says: [
      'pace.hours: the list must have exactly 7 entries (given: [0,1,1,0,0,3]). Give exactly 7 entries.',
    ],
  },
  {
    title: '25 hours in a day',
    path: 'pace.hours[5]',
    value: 25,
    says: [
      'pace.hours[5]: a number of hours must be at most 24 (given: 25). Give a number of hours of at most 24.',
    ],
  },
  {
    title: 'minutes as text',
    path: 'pace.log[0].minutes',
    value: '1 h',
    says: [
      'pace.log[0].minutes: it is a text, but a number of minutes belongs here (given: "1 h"). Write a number of minutes.',
    ],
  },
  {
    title: 'progress in percent',
    path: 'progress[1].share',
    value: 25,
    says: [
      'progress[1].share: a share from 0 to 1 must be at most 1 (given: 25). Give a share from 0 to 1 of at most 1.',
    ],
  },
  {
    title: 'yarn left negative',
    path: 'left[0].massG',
    value: -1,
    says: [
      'left[0].massG: a mass in grams must be at least 0 (given: -1). Give a mass in grams of at least 0.',
    ],
  },
  {
    title: 'weight of fit over 1',
    path: 'plan.weights.fit',
    value: 2,
    says: ['plan.weights.fit: a number must be at most 1 (given: 2). Give a number of at most 1.'],
  },
  {
    title: 'weights key misspelled',
    path: 'plan.weights.yarns',
    value: 1,
    says: [
      'plan.weights.yarns: there is no field of this name here (given: 1). Rename it to "yarn", or remove it.',
    ],
  },
  {
    title: 'repeat of no stitch',
    path: 'pattern.repeat.stitches',
    value: 0,
    says: [
      'pattern.repeat.stitches: a count must be at least 1 (given: 0). Give a count of at least 1.',
    ],
  },
  {
    title: 'swatch mass with its unit',
    path: 'evidence[0].massG',
    value: '14 g',
    says: [
      'evidence[0].massG: it is a text, but a mass in grams belongs here (given: "14 g"). Write a mass in grams.',
    ],
  },
  {
    title: 'report key unknown',
    path: 'report.cost',
    value: 12,
    says: [
      'report.cost: there is no field of this name here (given: 12). Remove it; the fields here are changes, fitNotes, photos, body, usedG, hours.',
    ],
  },
  {
    title: 'report body as text',
    path: 'report.body',
    value: 'no',
    says: [
      'report.body: it is a text, but true or false belongs here (given: "no"). Write true or false.',
    ],
  },
  {
    title: 'instructions without text',
    path: 'instructions[0].text',
    value: undefined,
    says: ['instructions[0].text: it is missing. Add it: a text.'],
  },
];
