import { cholesky, type NormalColumns, type Spread, Z95 } from '../../stats/index.ts';
import { END_MINUTES, KEPT_SD, PART_SD, SEAM_MINUTES, SHOP_SD } from './assumptions.ts';
import type { Course, Gate, Step } from './course.ts';
import { type Hand, jointPace } from './hand.ts';
import type { Finishing, PaceQuestion, WorkKind, WorkPart, YarnWait } from './types.ts';

/** Log stitches a minute over the draws, by kind; normals are named `pace:…`. */
export const paceColumns = (hand: Hand, normals: NormalColumns): Record<WorkKind, Float64Array> => {
  const { kinds, mean, covariance } = jointPace(hand);
  const factor = cholesky(covariance, kinds.length);
  const one = (row: number): Float64Array => {
    const column = new Float64Array(normals.n).fill(mean[row]!);
    for (let m = 0; m <= row; m++) {
      const z = normals.normal(`pace:${kinds[m]}`);
      const weight = factor[row * kinds.length + m]!;
      for (let i = 0; i < column.length; i++) column[i]! += weight * z[i]!;
    }
    return column;
  };
  return { plain: one(0), worked: one(1), ripped: one(2) };
};

/** Hours for so many stitches at a pace in log stitches a minute. */
export const partHours = (
  stitches: number,
  logPace: Float64Array,
  care: Float64Array,
): Float64Array => logPace.map((log, i) => (stitches / 60) * Math.exp(PART_SD * care[i]! - log));

const DOES: Readonly<Record<WorkKind, string>> = {
  plain: 'knitting',
  worked: 'knitting',
  ripped: 'ripping',
};

const partStep = (
  { name, stitches, fabric }: WorkPart,
  index: number,
  paces: Record<WorkKind, Float64Array>,
  normals: NormalColumns,
): Step => ({
  id: `part:${index}`,
  name: `${DOES[fabric]} ${name}`,
  kind: 'work',
  takesYarn: fabric !== 'ripped',
  hours: partHours(stitches, paces[fabric], normals.normal(`pace:part:${name}`)),
});

const finishingStep = ({ seamsMm, ends }: Finishing, normals: NormalColumns): Step => {
  const [seam, end] = [normals.normal('pace:seams'), normals.normal('pace:ends')];
  return {
    id: 'finishing',
    name: 'sewing up',
    kind: 'work',
    takesYarn: false,
    hours: seam.map(
      (z, i) =>
        ((seamsMm / 100) * SEAM_MINUTES.median * Math.exp(SEAM_MINUTES.logSd * z) +
          ends * END_MINUTES.median * Math.exp(END_MINUTES.logSd * end[i]!)) /
        60,
    ),
  };
};

/** A log-normal on each side of the middle, through all three points. */
const fromSpread = ({ p5, p50, p95 }: Spread, z: Float64Array): Float64Array => {
  const [below, above] = [Math.log(p50 / p5) / Z95, Math.log(p95 / p50) / Z95];
  return z.map((each) => p50 * Math.exp((each < 0 ? below : above) * each));
};

const dryingStep = (hours: Spread, normals: NormalColumns): Step => ({
  id: 'drying',
  name: 'drying',
  kind: 'clock',
  takesYarn: false,
  hours: fromSpread(hours, normals.normal('pace:drying')),
});

const gateOf = ({ heldOverNeeded, shopDays, order }: YarnWait, normals: NormalColumns): Gate => ({
  share: normals
    .normal('pace:yarn')
    .map((z) => heldOverNeeded.median * Math.exp(heldOverNeeded.logSd * z)),
  shopDays: normals.normal('pace:shop').map((z) => shopDays * Math.exp(SHOP_SD * z)),
  order,
});

/** The steps of a question over the draws of `normals`, in order; `paces` where they were made before. */
export const courseOf = (
  question: PaceQuestion,
  hand: Hand,
  normals: NormalColumns,
  paces = paceColumns(hand, normals),
): Course => {
  const { finishing, dryingHours, yarn } = question;
  const sewing = finishing === null ? [] : [finishingStep(finishing, normals)];
  const drying = dryingHours === null ? [] : [dryingStep(dryingHours, normals)];
  return {
    n: normals.n,
    steps: [
      ...question.parts.map((part, k) => partStep(part, k, paces, normals)),
      ...(finishing?.when === 'after-drying' ? [...drying, ...sewing] : [...sewing, ...drying]),
    ],
    gate: yarn === null ? null : gateOf(yarn, normals),
    stretch: normals.normal('pace:kept').map((z) => Math.exp(KEPT_SD * z)),
  };
};

/** Hours of work over the draws: drying and waits take none. */
export const workHours = ({ n, steps }: Course): Float64Array => {
  const total = new Float64Array(n);
  for (const { kind, hours } of steps)
    if (kind === 'work') for (let i = 0; i < n; i++) total[i]! += hours[i]!;
  return total;
};
