import type { Specimen } from '../fabric/index.ts';
import { fillNormals, randomSource } from '../stats/index.ts';
import { mm } from '../units/index.ts';
import { PULLOVER } from './check/questions.ts';
import { forecast } from './forecast.ts';
import type { ForecastQuestion, MeasurementWanted } from './forecast-types.ts';

const MEASUREMENTS = 20;
const DRAWS = 10_000;

/** A full record: 20 measurements in 9 sizes, a swatch in two states, a tape on the back. */
const fullRecord = (): ForecastQuestion => {
  const own = PULLOVER.measurements;
  const measurements = Array.from({ length: MEASUREMENTS }, (_, k): MeasurementWanted => {
    const like = own[k % own.length]!;
    return k < own.length ? like : { ...like, id: `extra-${k}`, landmark: `custom-${k}` };
  });
  return {
    ...PULLOVER,
    measurements,
    specimens: [swatch()],
    measured: [{ id: 'back', measurement: 'chest', state: 'asKnit', value: mm(510), span: 'flat' }],
    wanted: [
      ...PULLOVER.wanted,
      {
        landmark: 'upper-arm',
        body: mm(300),
        bodyFrom: 'measured',
        kind: 'ease',
        min: mm(20),
        max: mm(70),
      },
      {
        landmark: 'sleeve-length',
        body: mm(445),
        bodyFrom: 'table',
        kind: 'ease',
        min: mm(-15),
        max: mm(25),
      },
    ],
  };
};

const swatch = (): Specimen => ({
  id: 'swatch',
  name: 'Swatch',
  kind: 'swatch',
  stitch: 'stockinette',
  workedAsGarment: true,
  washed: 'as-garment',
  width: mm(160),
  height: mm(160),
  readings: (['width', 'length'] as const).flatMap((direction) =>
    (['asKnit', 'dried'] as const).map((state) => ({
      kind: 'count' as const,
      id: `${direction}-${state}`,
      direction,
      count: direction === 'width' ? 20.5 : 28,
      over: mm(100),
      state,
      read: 'flat' as const,
      place: 'middle',
    })),
  ),
});

const median = (times: number[]): number => times.sort((a, b) => a - b)[times.length >> 1]!;

const timed = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

/** Normals that the forecast draws: a column a measurement, their afresh twins, growth, give, bodies. */
const normalsDrawn = (question: ForecastQuestion): number =>
  (MEASUREMENTS + question.measured.length + 6 + 1 + question.wanted.length) * DRAWS;

export const bench = async () => {
  const question = fullRecord();
  const normals = normalsDrawn(question);
  const ours: number[] = [];
  const plain: number[] = [];
  for (let k = 0; k < 25; k++) {
    const whole = timed(() => forecast(question, { draws: DRAWS, seed: k }));
    const draw = timed(() => fillNormals(randomSource(k), new Float64Array(normals)));
    if (k < 5) continue;
    ours.push(whole);
    plain.push(draw);
  }
  const ms = median(ours);
  return [
    {
      name: 'forecast-full-record',
      ms,
      ratio: ms / median(plain),
      against: `a plain draw of the same ${normals} normals in the same run`,
    },
  ];
};
