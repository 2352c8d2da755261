/**
 * What a number in a record may be at its most and at its least, wherever the schema alone would take
 * nonsense. Bounds of sense, from memory and set wide on purpose: finer than the finest needle, longer
 * than the longest stole. Beyond them the answer to any question would be nonsense, or never come.
 */
export interface Bounds {
  readonly least: number;
  readonly most: number;
  /** As a message writes it behind the number; empty for a count. */
  readonly unit: string;
  /** True where 0 says that there is none. */
  readonly orZero?: true;
}

const mm = (least: number, most: number): Bounds => ({ least, most, unit: ' mm' });
const grams = (least: number, most: number): Bounds => ({ least, most, unit: ' g' });
const metres = (least: number, most: number): Bounds => ({ least, most, unit: ' m' });
const count = (least: number, most: number): Bounds => ({ least, most, unit: '' });
const percent = (least: number, most: number): Bounds => ({ least, most, unit: ' %' });

/** Of knitting: from one row of the finest lace up to ten metres. */
const LENGTH = mm(0.5, 10_000);
const NEEDLE = mm(0.3, 100);
const BODY = mm(10, 5_000);
const MASS = grams(0.1, 50_000);
/** On or beside a mat, from its corner. */
const PLACE = mm(-20_000, 20_000);
const MAT = mm(50, 20_000);
const TILE: Bounds = { ...mm(20, 20_000), orZero: true };
const TAPE = mm(0, 30_000);
const HUMIDITY = percent(1, 99);

/** Bounds by path; `[]` stands for any place in a list. */
export const BOUNDS: ReadonlyMap<string, Bounds> = new Map(
  Object.entries({
    needleMm: NEEDLE,
    massG: MASS,
    'wearer.body[].mm': BODY,
    'wearer.wanted[].minMm': mm(-10_000, 10_000),
    'wearer.wanted[].maxMm': mm(-10_000, 10_000),
    'pattern.gauge.stitches': count(0.5, 2_000),
    'pattern.gauge.rows': count(0.5, 2_000),
    'pattern.gauge.overMm': mm(5, 2_000),
    'pattern.needleMm': NEEDLE,
    'pattern.measurements[].values[]': LENGTH,
    'pattern.measurements[].counts[]': count(1, 50_000),
    'yarns[].fibres[].percent': percent(0.1, 100),
    'yarns[].metresPer100g': metres(1, 50_000),
    'yarns[].lots[].skeins': count(0.01, 1_000),
    'yarns[].lots[].gramsEach': grams(0.1, 20_000),
    'yarns[].lots[].metresEach': metres(0.1, 100_000),
    'evidence[].needleMm': NEEDLE,
    'evidence[].widthMm': LENGTH,
    'evidence[].heightMm': LENGTH,
    'evidence[].massG': grams(0.01, 20_000),
    'evidence[].readings[].count': count(0.1, 50_000),
    'evidence[].readings[].overMm': LENGTH,
    'evidence[].readings[].mm': LENGTH,
    'evidence[].readings[].massG': grams(0.1, 20_000),
    'evidence[].readings[].clippedMm': LENGTH,
    'evidence[].readings[].beforeMm': LENGTH,
    'evidence[].readings[].afterMm': LENGTH,
    'evidence[].readings[].restMm': LENGTH,
    'evidence[].readings[].pinnedMm': LENGTH,
    'evidence[].readings[].driedMm': LENGTH,
    'pieces[].measured[].mm': LENGTH,
    'plan.pinTo[].mm': LENGTH,
    'plan.stock.combs[].lengthMm': LENGTH,
    'plan.stock.wires[].lengthMm': LENGTH,
    'plan.mat.widthMm': MAT,
    'plan.mat.heightMm': MAT,
    'plan.mat.tileMm': TILE,
    'plan.pins[].at.xMm': PLACE,
    'plan.pins[].at.yMm': PLACE,
    'plan.pins[].to.xMm': PLACE,
    'plan.pins[].to.yMm': PLACE,
    'forecasts[].measurements[].p05Mm': mm(0.01, 100_000),
    'forecasts[].measurements[].p50Mm': mm(0.01, 100_000),
    'forecasts[].measurements[].p95Mm': mm(0.01, 100_000),
    'outcomes[].measured[].mm': LENGTH,
    'onMat[].steps[].xMm': PLACE,
    'onMat[].steps[].yMm': PLACE,
    'onMat[].steps[].from[].mm': TAPE,
    'onMat[].steps[].along.lengthMm': LENGTH,
    'onMat[].lies.mat.widthMm': MAT,
    'onMat[].lies.mat.heightMm': MAT,
    'onMat[].lies.mat.tileMm': TILE,
    'onMat[].lies.outline[]': PLACE,
    'onMat[].lies.reaches[].targetMm': mm(0.01, 20_000),
    'onMat[].lies.reaches[].pinnedMm': mm(0.01, 20_000),
    'onMat[].lies.reaches[].dryLowMm': mm(0.01, 20_000),
    'onMat[].lies.reaches[].dryHighMm': mm(0.01, 20_000),
    'onMat[].told[].tapeMm[]': TAPE,
    'onMat[].told[].measured[].mm': LENGTH,
    'onMat[].left.combs[].lengthMm': LENGTH,
    'onMat[].left.wires[].lengthMm': LENGTH,
    'dryings[].dry.massG': MASS,
    'dryings[].dry.air': HUMIDITY,
    'dryings[].wet': MASS,
    'dryings[].air.humidityPercent': HUMIDITY,
    'dryings[].fabricM2': { least: 0.0005, most: 100, unit: ' m²' },
    'dryings[].thick[].share': count(0.001, 0.999),
    'dryings[].thick[].times': count(1.01, 50),
    'dryings[].weighings[].massG': MASS,
    'people[].body[].mm': BODY,
    'pace.log[].minutes': { least: 0.1, most: 10_000, unit: ' minutes' },
    'pace.log[].stitches': count(1, 100_000),
    'left[].massG': { ...MASS, orZero: true },
    'report.usedG': MASS,
    'report.hours': { least: 0.01, most: 100_000, unit: ' hours' },
  } satisfies Readonly<Record<string, Bounds>>),
);

/** The most entries that a list has, where the schema sets no end to it. */
export const LONGEST: ReadonlyMap<string, number> = new Map(
  Object.entries({
    'wearer.body': 100,
    'wearer.wanted': 100,
    'pattern.sizes': 60,
    'pattern.measurements': 150,
    yarns: 50,
    'yarns[].fibres': 20,
    'yarns[].lots': 200,
    evidence: 100,
    'evidence[].readings': 200,
    pieces: 100,
    'pieces[].measured': 300,
    'plan.pinTo': 150,
    forecasts: 1_000,
    'forecasts[].measurements': 1_000,
    outcomes: 1_000,
    'outcomes[].measured': 300,
    notes: 5_000,
    'people[].body': 100,
  }),
);
