/** What is wrong with a statement, before it knows its line. */
export interface Problem {
  readonly code: string;
  readonly problem: string;
  readonly mend: string;
}

const make = (code: string, problem: string, mend: string): Problem => ({ code, problem, mend });

export const problem = {
  unknown: () =>
    make(
      'counts-unreadable',
      'this is not a step that can be read',
      'Write it as: cast on, work … rows, increase or decrease … at each end of every … row … times, bind off.',
    ),
  words: (left: string) =>
    make(
      'counts-words',
      `these words are not understood: ${left}`,
      'Take them out, or put them in brackets if they are a remark.',
    ),
  length: (given: string, why: string) =>
    make('counts-length', `${why}: ${given}`, 'Write it with its unit, as in 37 cm or 14 1/2 in.'),
  noExtent: () =>
    make(
      'counts-how-far',
      'it does not say how far to work',
      'Add the rows or the length: work 20 rows, work 6 cm, work to 37 cm.',
    ),
  whichEdge: () =>
    make(
      'counts-which-edge',
      'the beginning of these rows may be either edge',
      'Name it: at the neck edge, or at the side edge.',
    ),
  oddRows: (rows: number) =>
    make(
      'counts-odd-rows',
      `${rows === 1 ? 'one row' : `${rows} rows`} at their beginnings leave the two edges unlike`,
      'Use an even number of rows, or name the edge: at the neck edge, at the side edge.',
    ),
  noEdge: () =>
    make(
      'counts-no-edge',
      'it does not say where',
      'Add: at each end, at the neck edge, at the side edge, or evenly.',
    ),
  noRows: () =>
    make(
      'counts-no-rows',
      'it does not say in which rows',
      'Add: of the next row, or of every 4th row 6 times.',
    ),
  noTimes: () =>
    make(
      'counts-how-often',
      'it does not say how many times',
      'Add the number of times, or until how many stitches there are.',
    ),
  rhythm: (rest: string) =>
    make(
      'counts-rhythm',
      `it is not clear in which rows: ${rest}`,
      'Write: of the next row and every following 4th row 6 times, or: of every 4th row 6 times.',
    ),
  co: () => make('counts-co', 'CO may be cast on or cast off', 'Write it out.'),
  until: (from: number, to: number, each: number) =>
    make(
      'counts-until',
      `${from} stitches do not become ${to} by ${each} at a time`,
      'Check the stitches before this line and the number wanted.',
    ),
  claims: (says: number, are: number) =>
    make(
      'counts-do-not-add',
      `it says ${says} stitches, and the lines so far make ${are}`,
      'Check this line and those above it, or take the number in brackets out.',
    ),
  nothing: () =>
    make('counts-nothing', 'there are no instructions', 'Begin with: Cast on 100 stitches.'),
} as const;
