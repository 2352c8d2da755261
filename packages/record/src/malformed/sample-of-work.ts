import type { GarmentRecord } from '../schema/index.ts';

type PartsOfWork = Pick<
  GarmentRecord,
  | 'onMat'
  | 'dryings'
  | 'photos'
  | 'finished'
  | 'people'
  | 'pace'
  | 'progress'
  | 'left'
  | 'instructions'
  | 'report'
>;

/** The sample's work after the last stitch, and what bears on what to do next: sound, and one of each. */
export const sampleOfWork = (): PartsOfWork => ({
  onMat: [
    {
      id: 'w',
      piece: 'back',
      copy: '',
      mirrored: false,
      layers: 1,
      gentle: true,
      begun: '2031-01-05T10:00:00Z',
      steps: [
        {
          xMm: 100,
          yMm: 100,
          kind: 'wire',
          edge: 'cast-on',
          from: [
            { name: 'left of the mat', mm: 100 },
            { name: 'top of the mat', mm: 100 },
          ],
          along: { lengthMm: 400, dx: 1, dy: 0 },
          pullN: 0.5,
          done: 'in',
        },
        {
          xMm: 100,
          yMm: 500,
          kind: 't-pin',
          edge: 'selvedge',
          from: [
            { name: 'left of the mat', mm: 100 },
            { name: 'wire 1', mm: 400 },
          ],
          pullN: 1,
          done: 'in',
        },
        {
          xMm: 600,
          yMm: 500,
          kind: 'straight',
          edge: 'selvedge',
          from: [
            { name: 'pin 2', mm: 500 },
            { name: 'wire 1', mm: 640 },
          ],
          pullN: 1,
          done: 'passed',
        },
      ],
      at: 3,
      told: [
        {
          id: 't',
          step: 1,
          at: '2031-01-05T10:05:00Z',
          tapeMm: [102, null],
          felt: 'right',
          measured: [{ landmark: 'chest', mm: 490 }],
        },
      ],
      left: { straight: 10, tPins: 4, combs: [], wires: [] },
      extra: { straight: 3, tPins: 0, combs: 0, wires: 0 },
      pinsForWires: 2,
      pinned: '2031-01-05T10:30:00Z',
      out: { straight: 4, tPins: 1, combs: 0, wires: 1 },
    },
  ],
  dryings: [
    {
      id: 'd',
      begun: '2031-01-05T10:30:00Z',
      dry: { massG: 400, air: 'here' },
      wet: 700,
      air: { temperatureC: 20, humidityPercent: 55, movement: 'still', altitudeM: 300 },
      on: 'mat',
      layers: 1,
      pinned: true,
      fabricM2: 1.1,
      thick: [
        { id: 'a', name: 'ribbing', share: 0.2, times: 1.5 },
        { id: 'b', name: 'seams', share: 0.1, times: 2 },
      ],
      weighings: [{ id: 'g', at: '2031-01-05T18:30:00Z', massG: 560 }],
      touches: [{ id: 'h', at: '2031-01-06T08:00:00Z', where: 'ribbing', feels: 'cool' }],
      turned: ['2031-01-06T08:00:00Z'],
      dried: '2031-01-06T20:00:00Z',
    },
  ],
  photos: [
    {
      id: 'p',
      when: 'dried',
      on: '2031-01-06',
      caption: 'Dry',
      type: 'image/png',
      widthPx: 1,
      heightPx: 1,
      data: 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==',
    },
  ],
  finished: {
    on: '2031-01-07',
    missing: { straight: 1, tPins: 0, combs: 0, wires: 0 },
    remark: 'One straight pin is lost.',
  },
  people: [
    {
      id: 'q',
      name: 'Somebody else',
      group: 'man',
      body: [{ landmark: 'chest', mm: 1000, from: { kind: 'measured' } }],
    },
  ],
  pace: {
    log: [{ id: 'e', on: '2031-01-02', minutes: 60, stitches: 1500, fabric: 'plain' }],
    hours: [0, 1, 1, 0, 0, 3, 2],
    away: ['2031-01-15'],
    from: '2031-01-08',
    shopDays: 5,
  },
  progress: [
    { piece: 'back', share: 1, on: '2031-01-02' },
    { piece: 'front', share: 0.25 },
  ],
  left: [{ yarn: 'main', massG: 120, on: '2031-01-07' }],
  instructions: [{ id: 'i', piece: 'back', text: 'Cast on 100. Work to 58 cm. Bind off.' }],
  report: {
    changes: '2 cm longer.',
    fitNotes: '',
    photos: ['p'],
    body: false,
    usedG: 280,
    hours: 62,
  },
});
