import type { MalformedCase } from './malformed-case.ts';

/** Records of the wrong shape: wearer and pattern. */
export const SHAPE_OF_WEARER_PATTERN: readonly MalformedCase[] = [
  {
    title: 'wearer is a list',
    path: 'wearer',
    value: [],
    says: [
      'wearer: it is a list, but a group of fields in { } belongs here (given: []). Write a group of fields in { }.',
    ],
  },
  {
    title: 'group unknown',
    path: 'wearer.group',
    value: 'teenager',
    says: [
      'wearer.group: it is none of the choices here (given: "teenager"). Write one of "woman", "man", "child", "baby", "nobody", "not-said".',
    ],
  },
  {
    title: 'body is a group',
    path: 'wearer.body',
    value: {},
    says: [
      'wearer.body: it is a group of fields, but a list in [ ] belongs here (given: {}). Write a list in [ ].',
    ],
  },
  {
    title: 'body length negative',
    path: 'wearer.body[0].mm',
    value: -914,
    says: [
      'wearer.body[0].mm: a length in millimetres must be more than 0 (given: -914). Give a length in millimetres of more than 0.',
    ],
  },
  {
    title: 'body source missing',
    path: 'wearer.body[0].from',
    value: undefined,
    says: ['wearer.body[0].from: it is missing. Add it: a group of fields in { }.'],
  },
  {
    title: 'body source of unknown kind',
    path: 'wearer.body[0].from.kind',
    value: 'guessed',
    says: [
      'wearer.body[0].from.kind: it is none of the choices here (given: "guessed"). Write one of "measured", "table".',
    ],
  },
  {
    title: 'body source without its table',
    path: 'wearer.body[1].from.table',
    value: undefined,
    says: ['wearer.body[1].from.table: it is missing. Add it: a short id.'],
  },
  {
    title: 'ease as text',
    path: 'wearer.wanted[0].minMm',
    value: 'five',
    says: [
      'wearer.wanted[0].minMm: it is a text, but a length in millimetres belongs here (given: "five"). Write a length in millimetres.',
    ],
  },
  {
    title: 'ease too large',
    path: 'wearer.wanted[0].maxMm',
    value: 100001,
    says: [
      'wearer.wanted[0].maxMm: a length in millimetres must be at most 100000 (given: 100001). Give a length in millimetres of at most 100000.',
    ],
  },
  {
    title: 'wanted of no kind',
    path: 'wearer.wanted[0].kind',
    value: undefined,
    says: ['wearer.wanted[0].kind: it is missing. Add it: one of "ease", "finished".'],
  },
  {
    title: 'wanted ease with a span',
    path: 'wearer.wanted[0].span',
    value: 'flat',
    says: [
      'wearer.wanted[0].span: there is no field of this name here (given: "flat"). Remove it; the fields here are kind, landmark, minMm, maxMm.',
    ],
  },
  {
    title: 'pattern missing',
    path: 'pattern',
    value: undefined,
    says: ['pattern: it is missing. Add it: a group of fields in { }.'],
  },
  {
    title: 'sizes is a text',
    path: 'pattern.sizes',
    value: 'S M L',
    says: [
      'pattern.sizes: it is a text, but a list in [ ] belongs here (given: "S M L"). Write a list in [ ].',
    ],
  },
  {
    title: 'a size is a number',
    path: 'pattern.sizes[1]',
    value: 38,
    says: ['pattern.sizes[1]: it is a number, but a text belongs here (given: 38). Write a text.'],
  },
  {
    // Rows may be left out: many patterns give none.
    title: 'gauge without stitches',
    path: 'pattern.gauge.stitches',
    value: undefined,
    says: ['pattern.gauge.stitches: it is missing. Add it: a count.'],
  },
  {
    title: 'gauge state unknown',
    path: 'pattern.gauge.state',
    value: 'washed',
    says: [
      'pattern.gauge.state: it is none of the choices here (given: "washed"). Write one of "asKnit", "dried".',
    ],
  },
  {
    title: 'a value is a text',
    path: 'pattern.measurements[0].values[1]',
    value: '1000',
    says: [
      'pattern.measurements[0].values[1]: it is a text, but a length in millimetres belongs here (given: "1000"). Write it without quotes: 1000.',
    ],
  },
  {
    title: 'a value is a text with a comma',
    path: 'pattern.measurements[0].values[1]',
    value: '100,5',
    says: [
      'pattern.measurements[0].values[1]: it is a text, but a length in millimetres belongs here (given: "100,5"). Write it without quotes: 100.5.',
    ],
  },
  {
    title: 'a value is negative',
    path: 'pattern.measurements[0].values[1]',
    value: -5,
    says: [
      'pattern.measurements[0].values[1]: a length in millimetres must be more than 0 (given: -5). Give a length in millimetres of more than 0.',
    ],
  },
  {
    title: 'span is a word of no meaning',
    path: 'pattern.measurements[0].span',
    value: 'round',
    says: [
      'pattern.measurements[0].span: it is none of the choices here (given: "round"). Write "around", or another of "flat", "around".',
    ],
  },
  {
    title: 'worked unknown',
    path: 'pattern.measurements[1].worked',
    value: 'to length',
    says: [
      'pattern.measurements[1].worked: it is none of the choices here (given: "to length"). Write "to-length", or another of "counted", "to-length".',
    ],
  },
  {
    title: 'direction unknown',
    path: 'pattern.measurements[2].direction',
    value: 'across',
    says: [
      'pattern.measurements[2].direction: it is none of the choices here (given: "across"). Write one of "width", "length".',
    ],
  },
];
