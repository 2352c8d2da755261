import type { ForecastQuestion } from '../../garment/index.ts';
import { type FitTarget, type FitWanted, findLandmark, fitTargets } from '../../garment/index.ts';
import { type Millimetres, mm } from '../../units/index.ts';
import type { PersonToFit } from '../types.ts';
import type { Luck } from './luck.ts';

/** Whom a route is judged on: what is wanted, and the doubt about that body. */
export interface Judged {
  readonly targets: readonly FitTarget[];
  /** Normals for the doubt about the body at a landmark. */
  readonly body: (name: string) => Float64Array;
  /** Landmarks that were wanted and cannot be judged on this body. */
  readonly unknown: readonly string[];
}

/** The wearer, on the draws that the forecast uses. */
export const ownTargets = (question: ForecastQuestion, luck: Luck): Judged => {
  const { model, passages } = luck.known;
  const targets = fitTargets(question, model.measurements, passages);
  const judged = new Set(targets.map(({ wanted }) => wanted.landmark));
  return {
    targets,
    body: luck.draws.body,
    unknown: question.wanted.map((w) => w.landmark).filter((each) => !judged.has(each)),
  };
};

const bodyIdOf = (landmark: string): string | null => {
  const known = findLandmark(landmark);
  return known === null ? landmark : known.body;
};

/**
 * The wearer's wish on another body: the same ease. A finished length that was wanted is turned into the
 * ease that it is on the wearer; where her body is not known there it cannot be judged on anybody else.
 */
const wishFor = (wanted: FitWanted, person: PersonToFit): FitWanted | null => {
  const id = bodyIdOf(wanted.landmark);
  const body = person.body.find((each) => each.body === id);
  if (body === undefined) return null;
  const over: Millimetres | null = wanted.kind === 'ease' ? mm(0) : wanted.body;
  if (over === null) return null;
  return {
    landmark: wanted.landmark,
    body: body.mm,
    bodyFrom: body.from,
    kind: 'ease',
    min: mm(wanted.min - over),
    max: mm(wanted.max - over),
  };
};

/** Somebody else; her doubts are columns of her own. */
export const personTargets = (
  question: ForecastQuestion,
  luck: Luck,
  person: PersonToFit,
): Judged => {
  const wishes = question.wanted.map((wanted) => ({ wanted, wish: wishFor(wanted, person) }));
  const wanted = wishes.flatMap(({ wish }) => (wish === null ? [] : [wish]));
  const { model, passages } = luck.known;
  return {
    targets: fitTargets({ ...question, wanted }, model.measurements, passages),
    body: (name) => luck.normals.normal(`routes:${person.id}:${name}`),
    unknown: wishes.flatMap(({ wanted: { landmark }, wish }) => (wish === null ? [landmark] : [])),
  };
};
