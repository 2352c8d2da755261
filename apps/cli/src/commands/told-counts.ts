import {
  buttonNotice,
  countsOfPiece,
  type PieceCounts,
  type Pitch,
  type Recount,
  type Repeat,
  readCounts,
  recount,
  type SockCounts,
  sockCounts,
} from '@dryflat/engine/counts';
import {
  type Forecast,
  type ForecastQuestion,
  findLandmark,
  forecast,
  type OutlinePiece,
  outlineOf,
  outlineSizes,
} from '@dryflat/engine/garment';
import { type Fault, fail, mm, ok, type Result } from '@dryflat/engine/units';
import { askForecast, awaitsSpan, type GarmentRecord, type Instruction } from '@dryflat/record';

/** A piece, or the leg or the foot of a sock. */
export interface ToldPart {
  readonly name: string;
  readonly counts: PieceCounts;
}

/** The pattern's own text of a piece beside what it becomes; faults where it cannot be read or recounted. */
export interface ToldText {
  readonly piece: string;
  readonly found: Result<Recount>;
}

export interface ToldCounts {
  readonly record: GarmentRecord;
  readonly pitch: Pitch;
  /** The pattern's gauge; null where it gives none. */
  readonly theirs: Pitch | null;
  readonly repeat: Repeat | null;
  readonly parts: readonly ToldPart[];
  readonly heel: SockCounts['heel'] | null;
  readonly texts: readonly ToldText[];
  /** Sizes that nobody gave, what had to give way, what should be known. */
  readonly notices: readonly { readonly code: string; readonly text: string }[];
}

type Gauge = Forecast['gauge'];

const pitchIn = (gauge: Gauge, state: Pitch['state']): Pitch => ({
  stitch: mm(gauge.stitch[state].p50Mm),
  row: mm(gauge.row[state].p50Mm),
  state,
});

const outlineOfQuestion = ({ kind, measurements, chosen }: ForecastQuestion) =>
  outlineOf(
    kind,
    outlineSizes(
      measurements.map(({ landmark, span, values }) => ({
        landmark,
        span,
        mm: values[chosen] ?? null,
      })),
    ),
  );

interface Counted {
  readonly parts: readonly ToldPart[];
  readonly heel: SockCounts['heel'] | null;
}

const countSock = (piece: OutlinePiece, pitch: Pitch, repeat?: Repeat): Result<Counted> => {
  const sock = sockCounts(piece, { pitch, repeat });
  if (!sock.ok) return sock;
  const { leg, heel, foot } = sock.value;
  const parts = [
    { name: 'leg', counts: leg },
    { name: 'foot', counts: foot },
  ];
  return ok({ parts, heel });
};

const countOne = (piece: OutlinePiece, pitch: Pitch, repeat?: Repeat): Result<Counted> => {
  if (piece.name === 'sock') return countSock(piece, pitch, repeat);
  const counts = countsOfPiece(piece, { pitch, repeat });
  return counts.ok
    ? ok({ parts: [{ name: piece.name, counts: counts.value }], heel: null })
    : counts;
};

const countAll = (
  pieces: readonly OutlinePiece[],
  pitch: Pitch,
  repeat?: Repeat,
): Result<Counted> => {
  const parts: ToldPart[] = [];
  let heel: Counted['heel'] = null;
  for (const piece of pieces) {
    const counted = countOne(piece, pitch, repeat);
    if (!counted.ok) return counted;
    parts.push(...counted.value.parts);
    heel = counted.value.heel ?? heel;
  }
  return ok({ parts, heel });
};

/** The pattern's gauge; null where it gives none, or its stitches only. */
const wholeGauge = (gauge: ForecastQuestion['patternGauge']): Pitch | null =>
  gauge === null || gauge.row === null ? null : { ...gauge, row: gauge.row };

const noGauge: Fault = {
  code: 'pattern-no-gauge',
  field: 'pattern.gauge',
  given: '',
  problem: 'without stitches and rows of the pattern’s gauge its counts cannot be put into another',
  mend: 'Enter the stitches and rows that the pattern gives, and over which length.',
};

const textOf = (
  { text, piece, id }: Instruction,
  theirs: Pitch | null,
  mine: Pitch | null,
  repeat?: Repeat,
): ToldText => {
  if (theirs === null || mine === null) return { piece, found: fail(noGauge) };
  const steps = readCounts(text, { field: `instructions "${id}"`, rowMm: theirs.row });
  return { piece, found: steps.ok ? recount(steps.value, theirs, mine, repeat) : steps };
};

const noSuchPiece = (given: string, names: readonly string[]): Fault => ({
  code: 'piece-not-there',
  field: '--piece',
  given,
  problem: 'the garment has no piece of this name',
  mend: `Choose one of ${[...new Set(names)].join(', ')}.`,
});

/** Why a size is none of the pattern's. */
const missing = ({ pattern }: GarmentRecord, landmark: string): string => {
  const name = findLandmark(landmark)?.name.us ?? landmark;
  const open = pattern.measurements.find((row) => row.landmark === landmark && awaitsSpan(row));
  return open === undefined
    ? `The pattern gives no ${name}`
    : `"${open.name}" is left out, as nobody has said whether it is flat or around`;
};

const assumedTexts = (
  record: GarmentRecord,
  { assumed, notices }: ReturnType<typeof outlineOf>,
) => [
  ...assumed.map(({ landmark, mm: size, why }) => ({
    code: 'size-assumed',
    text: `${missing(record, landmark)}: {mm:${size.toFixed(1)}} is assumed, ${why}.`,
  })),
  ...notices.map(({ code, text }) => ({ code, text })),
];

/**
 * Counts of every piece of a record at the dried gauge that is forecast, or of the one that is asked
 * for; and what the pattern's own texts become, each in the state of the pattern's gauge.
 */
export const tellCounts = (record: GarmentRecord, only: string | undefined): Result<ToldCounts> => {
  const question = askForecast(record);
  if (!question.ok) return question;
  const { gauge } = forecast(question.value);
  const pitch = pitchIn(gauge, 'dried');
  const outline = outlineOfQuestion(question.value);
  const repeat = record.pattern.repeat;
  const texts = record.instructions ?? [];
  const names = [...outline.pieces.map(({ name }) => name), ...texts.map(({ piece }) => piece)];
  if (only !== undefined && !names.includes(only)) return fail(noSuchPiece(only, names));
  const wanted = (name: string) => only === undefined || name === only;
  const pieces = outline.pieces.filter(({ name }) => wanted(name));
  const counted = countAll(pieces, pitch, repeat);
  if (!counted.ok) return counted;
  const theirs = wholeGauge(question.value.patternGauge);
  const mine = theirs && pitchIn(gauge, theirs.state);
  const buttons = record.kind.startsWith('cardigan') ? buttonNotice(record.wearer.group) : null;
  return ok({
    record,
    pitch,
    theirs,
    repeat: repeat ?? null,
    ...counted.value,
    texts: texts
      .filter(({ piece }) => wanted(piece))
      .map((each) => textOf(each, theirs, mine, repeat)),
    notices: [...assumedTexts(record, outline), ...(buttons ? [buttons] : [])],
  });
};
