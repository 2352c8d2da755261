import { parseLength } from '../../units/index.ts';
import type { Problem } from './problem.ts';
import { problem } from './problem.ts';
import type { Shape, ShapedEdge, Shaping, Step, Work } from './types.ts';

/** Shaping until so many stitches are there: its times follow from the stitches before it. */
export interface Until {
  readonly kind: 'until';
  readonly shape: Shape;
  readonly stitches: number;
}

export type Read = Step | Until;

type Reader = (words: string) => readonly Read[] | Problem | null;

const castOn: Reader = (words) => {
  const found = /^cast on (\d+)(?: stitch)?( .*)?$/.exec(words);
  if (!found || / at | beginning | end /.test(`${found[2] ?? ''} `)) return null;
  const rest = found[2] ?? '';
  const round = /\bround\b/.test(rest);
  const left = rest.replace(
    /\b(and|join|in|into|for|working|work|the|a|round|being careful not to twist|without twisting|using|with|needles?)\b/g,
    ' ',
  );
  if (left.trim() !== '') return problem.words(left.trim());
  return [{ kind: 'cast-on', stitches: Number(found[1]), round }];
};

const LENGTH = /\{mm:\d+(?:\.\d+)?\}|\d[\d./⅛¼⅜½⅝¾⅞ ]*\s?(?:cm|mm|inches|inch|in|["″])(?![a-z])/;

const lengthOf = (text: string): number | Problem => {
  const token = /^\{mm:(.*)\}$/.exec(text);
  if (token) return Number(token[1]);
  const parsed = parseLength(text, { field: 'length' });
  if (parsed.ok) return parsed.value.value;
  const [fault] = parsed.faults;
  return problem.length(text, fault?.problem ?? 'the length cannot be read');
};

/** Words of a work line that add nothing to how far it goes. */
const FILLERS =
  /\b(work|knit|continue|in|and|the|for|even|straight|rib|until|till|to|piece|it|measures|is|are|long|a|of|stockinette|stocking|garter|moss|seed|stitch|pattern|as|set|without|shaping|more|further|total|length|from|beginning|cast on edge|cast on|row|round|so|every|then|1x1|2x2|k1|p1|k2|p2|with|smaller|larger|needles?|or|about|approx)\b/g;

const extentOf = (words: string): Work['extent'] | Problem | null => {
  const rows = /\b(\d+) (?:more )?(?:row|round)\b/.exec(words);
  if (rows) return { rows: Number(rows[1]) };
  const length = LENGTH.exec(words)?.[0];
  if (length === undefined) return null;
  const mm = lengthOf(length.trim());
  if (typeof mm !== 'number') return mm;
  return /\b(to|until|till)\b/.test(words) ? { toMm: mm } : { mm };
};

const work: Reader = (words) => {
  const found = /^(?:then |and )?(work|knit|continue|rib)\b/.exec(words);
  if (!found || /\b(side|increase|decrease|bind off)\b/.test(words)) return null;
  const extent = extentOf(words);
  if (extent === null) return problem.noExtent();
  if ('code' in extent) return extent;
  const left = words
    .replace(new RegExp(LENGTH, 'g'), ' ')
    .replace(/\b\d+ (?:more )?(?:row|round)\b/g, ' ')
    .replace(FILLERS, ' ')
    .replace(/\//g, ' ')
    .trim();
  if (left !== '') return problem.words(left.replace(/\s+/g, ' '));
  return [{ kind: 'work', fabric: /\brib\b/.test(words) ? 'rib' : 'main', extent }];
};

const divide: Reader = (words) => {
  const bound =
    /^bind off (?:the )?centre (\d+)(?: stitch)?( and work each side separately)?$/.exec(words);
  if (bound) return [{ kind: 'divide', stitches: Number(bound[1]) }];
  return /^divide for (?:the )?neck\b/.test(words) ? [{ kind: 'divide', stitches: 0 }] : null;
};

const finish: Reader = (words) => {
  if (
    /^bind off (?:all |the |all the |all of the )?(?:remaining )?stitch(?: remaining)?$|^bind off(?: all| remaining)?$/.test(
      words,
    )
  )
    return [{ kind: 'finish', by: 'bind-off' }];
  if (/^(?:leave|place|slip|put|keep) .*\b(?:holder|waste yarn)$/.test(words))
    return [{ kind: 'finish', by: 'hold' }];
  return /^(?:break (?:the )?yarn and )?(?:draw|pull|thread|run) .*\bthrough\b/.test(words)
    ? [{ kind: 'finish', by: 'gather' }]
    : null;
};

const together: Reader = (words) => {
  if (/^shape each edge at the same times? from here$/.test(words)) return [{ kind: 'mark' }];
  const found =
    /^at the same times?(?: from the same row| counted again from where the neck shapings? begins?)?(?: (.+))?$/.exec(
      words,
    );
  if (!found) return null;
  if (found[1] === undefined) return [{ kind: 'same-time' }];
  const rest = readClause(found[1]);
  return 'code' in rest ? rest : [{ kind: 'same-time' }, ...rest];
};

const other: Reader = (words) => {
  if (
    /^(?:work|complete|finish|knit) (?:the )?(?:other|2th) side\b/.test(words) ||
    /^reverse (?:all )?shapings?$/.test(words)
  )
    return [{ kind: 'reverse' }];
  return /^(?:fasten off|turn|and work each side separately|work each side separately)$/.test(words)
    ? []
    : null;
};

const EDGES: readonly (readonly [RegExp, ShapedEdge])[] = [
  [/\b(?:at |on )?each (?:end|side|edge)\b/, 'each'],
  [/\b(?:at |on )?(?:the )?(?:neck|centre front|front|inner) edge\b/, 'neck'],
  [/\b(?:at |on )?(?:the )?(?:side|armhole|shoulder|seam|sleeve|raglan|outer) edge\b/, 'side'],
  [/\bevenly(?: spaced)?\b/, 'around'],
];

const edgeOf = (words: string): { edge: ShapedEdge | null; rest: string } => {
  for (const [pattern, edge] of EDGES)
    if (pattern.test(words))
      return { edge, rest: words.replace(pattern, ' ').replace(/\s+/g, ' ').trim() };
  return { edge: null, rest: words };
};

interface Beat {
  readonly first: number;
  readonly every: number;
  readonly times: number | null;
  readonly until: number | null;
}

const NTH =
  '(?:of |in |on )?(?:the )?every(?: following)?(?: (\\d+)th| (alternate|other))?(?: following)? (?:row|round)';
const TIMES = '(?: (\\d+) times( more)?(?: in all| in total)?)?';
const UNTIL =
  '(?: (?:until|to|till)(?: there are)? (\\d+) stitch(?: remaining| remain| are left)?)?';
const FIRST =
  '(?:of |in |on |across )?(?:the )?(?:(next)|(?:following )?(\\d+)th)(?: following)?(?: (?:row|round))?(?: from here)?';
const REGULAR = new RegExp(`^${NTH}${TIMES}${UNTIL}$`);
const STARTING = new RegExp(`^${FIRST}(?: (?:and|then)(?: then)? ${NTH}${TIMES}${UNTIL})?$`);

const interval = (nth: string | undefined, second: string | undefined): number =>
  nth !== undefined ? Number(nth) : second !== undefined ? 2 : 1;

const beatOf = (words: string): Beat | null => {
  const regular = REGULAR.exec(words);
  if (regular) {
    const every = interval(regular[1], regular[2]);
    const [times, until] = [regular[3], regular[5]];
    return {
      first: every,
      every,
      times: times ? Number(times) : null,
      until: until ? Number(until) : null,
    };
  }
  const found = STARTING.exec(words);
  if (!found) return null;
  const [, next, nth, every, second, times, more, until] = found;
  const first = next ? 1 : Number(nth);
  const goesOn = /\bevery\b/.test(words);
  if (!goesOn) return { first, every: first, times: 1, until: null };
  const all = times ? Number(times) + (more ? 1 : 0) : null;
  return { first, every: interval(every, second), times: all, until: until ? Number(until) : null };
};

const VERBS: Readonly<Record<string, Shaping>> = {
  increase: 'increase',
  decrease: 'decrease',
  'bind off': 'bind-off',
  'cast on': 'cast-on',
};

const atBeginnings = (
  by: Shaping,
  stitches: number,
  rest: string,
): readonly Step[] | Problem | null => {
  const found = /^(?:at |on )?(?:the )?beginning of (?:the )?next(?: (\d+))? (?:row|round)$/.exec(
    rest,
  );
  if (!found) return /\bbeginning\b/.test(rest) ? problem.whichEdge() : null;
  const rows = Number(found[1] ?? 1);
  if (rows % 2 !== 0) return problem.oddRows(rows);
  return [{ kind: 'shape', by, edge: 'each', stitches, first: 1, every: 2, times: rows / 2 }];
};

const shaped = (by: Shaping, stitches: number, words: string): readonly Read[] | Problem => {
  const { edge, rest } = edgeOf(words);
  const beginnings = edge === null ? atBeginnings(by, stitches, rest) : null;
  if (beginnings) return beginnings;
  if (edge === null) return problem.noEdge();
  if (
    edge === 'around' &&
    /^(?:across|over) (?:the )?next (?:row|round)$/.test(rest) &&
    (by === 'increase' || by === 'decrease')
  )
    return [{ kind: 'evenly', change: by, stitches }];
  const beat = beatOf(rest);
  if (!beat) return rest === '' ? problem.noRows() : problem.rhythm(rest);
  const { first, every, times, until } = beat;
  const shape: Shape = { kind: 'shape', by, edge, stitches, first, every, times: times ?? 1 };
  if (until !== null) return [{ kind: 'until', shape, stitches: until }];
  return times === null ? problem.noTimes() : [shape];
};

const shape: Reader = (words) => {
  const found =
    /^(?:then |and )?(increase|decrease|bind off|cast on) (\d+)(?: more)?(?: stitch)?(?: (.*))?$/.exec(
      words,
    );
  if (!found) return null;
  const [, name = '', stitches, rest = ''] = found;
  return shaped(VERBS[name]!, Number(stitches), rest);
};

const READERS: readonly Reader[] = [together, castOn, divide, finish, other, work, shape];

/** The steps that a statement in plain words says; one or two, or none for words that change nothing. */
export const readClause = (words: string): readonly Read[] | Problem => {
  if (/^co\b/.test(words)) return problem.co();
  for (const reader of READERS) {
    const found = reader(words);
    if (found !== null) return found;
  }
  return problem.unknown();
};
