import {
  type Change,
  type Evidence,
  type FabricModel,
  fabricModel,
  type GrowthTerm,
  garmentTapeSd,
  SHOWN_SD,
} from '../fabric/index.ts';
import { type Affine, add, constant, scale } from '../stats/index.ts';
import type { ForecastQuestion, MeasuredOnGarment, MeasurementWanted } from './forecast-types.ts';
import { type PartName, partOf } from './landmarks.ts';

/**
 * The measurements of one garment as unknowns beside those of its fabric, in logarithms of
 * millimetres, as knit. A measurement that is counted follows the gauge; one that is knit to length
 * starts at that length whatever the gauge.
 */
export interface SizedMeasurement {
  readonly wanted: MeasurementWanted;
  /** Log of the length as knit. */
  readonly asKnit: Affine;
  /** The same in a garment begun afresh: shares the gauge, but nothing of the piece that exists. */
  readonly afresh: Affine;
  /** What its part alone changes beside the fabric, where a tape has shown that it does. */
  readonly own: Readonly<Partial<Record<Change, Affine>>>;
  readonly targetMm: number | null;
  readonly measured: readonly MeasuredOnGarment[];
}

export interface SizeModel {
  readonly fabric: FabricModel;
  readonly measurements: readonly SizedMeasurement[];
  /** Evidence of the fabric and of what was measured at rest, without pins, on the garment itself. */
  readonly evidence: readonly Evidence[];
}

/** One piece to another, in a counted width or height. Common practice, no source. */
export const PIECE_SD = 0.01;
/** Knit to a length on the needles: the tape on bunched fabric errs. Common practice, no source. */
export const TO_LENGTH_SD = 0.02;
/** Another stitch pattern than the garment's follows its gauge less closely. Assumption. */
const OTHER_STITCH_SD = 0.04;
/** A length that the tape contradicts: neither count nor pattern speaks of it any more. Assumption. */
const OVERRULED_SD = 0.5;
/** A measurement that the pattern does not give is known only from the tape: as good as any length. */
const UNKNOWN = { log: Math.log(400), sd: 2 };

/** What was expected of the garment and what a tape on it has contradicted. */
export interface Overruled {
  /** Ids of measurements of which count, gauge and pattern do not speak any more. */
  readonly lengths: ReadonlySet<string>;
  readonly growth: ReadonlySet<GrowthTerm>;
  /** Changes of one part of which the usual size is not believed; the other changes as is usual. */
  readonly parts: ReadonlySet<PartGrowth>;
}

export type PartGrowth = `${PartName} ${GrowthTerm}`;

export const NOTHING_OVERRULED: Overruled = {
  lengths: new Set(),
  growth: new Set(),
  parts: new Set(),
};

export const sizeModel = (
  question: ForecastQuestion,
  overruled: Overruled = NOTHING_OVERRULED,
): SizeModel => {
  const fabric = fabricModel(question, overruled.growth);
  const parts = [...overruled.parts].map(
    (each) => [each, fabric.unknowns.fresh(0, SHOWN_SD)] as const,
  );
  const own = new Map<PartGrowth, Affine>(parts);
  const measurements = question.measurements.flatMap((m) =>
    sized(question, fabric, m, overruled, own),
  );
  const measured = measurements.flatMap((m) => restEvidence(question, fabric, m));
  return { fabric, measurements, evidence: [...fabric.evidence, ...measured] };
};

const sized = (
  question: ForecastQuestion,
  fabric: FabricModel,
  wanted: MeasurementWanted,
  overruled: Overruled,
  partGrowth: ReadonlyMap<PartGrowth, Affine>,
): SizedMeasurement[] => {
  const targetMm = wanted.values[question.chosen] ?? null;
  const count = wanted.counts[question.chosen] ?? null;
  const measured = question.measured.filter((m) => m.measurement === wanted.id);
  const base = baseLog(fabric, wanted, targetMm, count);
  if (base === null && measured.length === 0 && wanted.knit === undefined) return [];
  const { unknowns } = fabric;
  const start = base ?? unknowns.fresh(UNKNOWN.log, UNKNOWN.sd);
  const sd = spread(question, wanted);
  const one = (from: Affine, own: number) => add(from, unknowns.fresh(0, own));
  const there = knitLog(fabric, wanted) ?? start;
  const asKnit = one(there, overruled.lengths.has(wanted.id) ? OVERRULED_SD : sd);
  const begun = measured.length > 0 || there !== start;
  const own = Object.fromEntries(
    (['dried', 'wet', 'rewashed'] as const).flatMap((change) => {
      const form = partGrowth.get(`${partOf(wanted.landmark)} ${change} ${wanted.direction}`);
      return form === undefined ? [] : [[change, form] as const];
    }),
  );
  return [{ wanted, asKnit, afresh: begun ? one(start, sd) : asKnit, own, targetMm, measured }];
};

const spread = (question: ForecastQuestion, wanted: MeasurementWanted): number =>
  Math.hypot(
    wanted.worked === 'counted' ? PIECE_SD : TO_LENGTH_SD,
    wanted.worked === 'counted' && wanted.stitch !== question.stitch ? OTHER_STITCH_SD : 0,
  );

/** The same of the piece that is there, by its own stitches; null where nobody counted them. */
const knitLog = (fabric: FabricModel, { knit, direction }: MeasurementWanted): Affine | null =>
  knit === undefined ? null : add(constant(Math.log(knit.stitches)), fabric.asKnit[direction]);

/** Log length as knit before the scatter of this piece; null where the pattern says nothing. */
const baseLog = (
  fabric: FabricModel,
  wanted: MeasurementWanted,
  targetMm: number | null,
  count: number | null,
): Affine | null => {
  if (wanted.worked === 'to-length') return targetMm === null ? null : constant(Math.log(targetMm));
  const pitch = fabric.asKnit[wanted.direction];
  if (count !== null) return add(constant(Math.log(count)), pitch);
  if (targetMm === null) return null;
  const printed = fabric.patternPitch[wanted.direction];
  return add(constant(Math.log(targetMm)), scale(printed, -1), pitch);
};

/** Log of the length in a state at rest without pins. */
export const logIn = (
  fabric: FabricModel,
  size: Affine,
  { wanted: { direction: d }, own }: Pick<SizedMeasurement, 'wanted' | 'own'>,
  state: 'asKnit' | 'wet' | 'dried' | 'rewashed',
): Affine => {
  if (state === 'asKnit') return size;
  const changed = (from: Affine, change: Change, usual: Affine) =>
    add(from, usual, ...(own[change] === undefined ? [] : [own[change]]));
  const dried = changed(size, 'dried', fabric.driedOverAsKnit[d]);
  if (state === 'dried') return dried;
  return changed(
    dried,
    state,
    (state === 'wet' ? fabric.wetOverDried : fabric.rewashedOverDried)[d],
  );
};

/** States whose rest length is linear in the unknowns whatever the plan. */
const ALWAYS_REST = new Set(['asKnit', 'wet', 'rewashed']);

const restEvidence = (
  question: ForecastQuestion,
  fabric: FabricModel,
  m: SizedMeasurement,
): Evidence[] =>
  m.measured.flatMap((measured) => {
    const rest =
      ALWAYS_REST.has(measured.state) || (measured.state === 'dried' && question.drying === 'lay');
    if (!rest) return [];
    const state = measured.state as 'asKnit' | 'wet' | 'dried' | 'rewashed';
    return [tapeEvidence(m, measured, logIn(fabric, m.asKnit, m, state), 0, 0)];
  });

/** A tape reading of the garment: log value = form + shift, with the tape's error and `extraSd`. */
export const tapeEvidence = (
  m: SizedMeasurement,
  measured: MeasuredOnGarment,
  form: Affine,
  shift: number,
  extraSd: number,
): Evidence => {
  const value = inSpan(measured, m.wanted.span);
  const flatMm = m.wanted.span === 'around' ? value / 2 : value;
  return {
    form,
    value: Math.log(value) - shift,
    sd: Math.hypot(garmentTapeSd(flatMm), extraSd),
    basis: {
      id: `measured:${measured.id}`,
      kind: 'measured',
      text: `${m.wanted.name}: {mm:${measured.value}} ${measured.span === 'flat' && m.wanted.span === 'around' ? 'flat, ' : ''}${STATE_WORDS[measured.state]}`,
      source: null,
    },
  };
};

/** A girth is twice its flat width; the other way round likewise. */
export const inSpan = (measured: MeasuredOnGarment, span: 'flat' | 'around'): number =>
  measured.span === span ? measured.value : measured.value * (span === 'around' ? 2 : 0.5);

const STATE_WORDS: Readonly<Record<MeasuredOnGarment['state'], string>> = {
  asKnit: 'as knit',
  wet: 'wet',
  pinned: 'pinned',
  dried: 'dried',
  worn: 'worn',
  rewashed: 'after later washes',
};
