import { expect, test } from 'vitest';
import { afterPaper, type PaperNow } from './use-paper.ts';

const page = { title: 'A', svg: '<svg/>' };
const fault = { code: 'x', field: 'pattern', given: '', problem: 'p', mend: 'm' };
const seen: PaperNow = {
  pages: [page],
  report: null,
  done: null,
  faults: [],
  broken: null,
  pending: true,
  writing: false,
};

test('PP3: pages that were seen stay while others are made, and go when there are none', () => {
  const working = afterPaper(seen, { kind: 'progress', turn: 2, done: 0.5 });
  expect(working).toMatchObject({ pages: [page], done: 0.5, pending: true });
  const newer = { title: 'B', svg: '<svg/>' };
  expect(afterPaper(working, { kind: 'pages', turn: 2, pages: [newer], report: null })).toEqual({
    ...seen,
    pages: [newer],
    pending: false,
  });
  const refused = afterPaper(working, { kind: 'faults', turn: 2, faults: [fault] });
  expect(refused).toMatchObject({ pages: null, faults: [fault], pending: false });
});

test('PP3: a PDF that is written leaves the pages where they are', () => {
  const ready = { ...seen, pending: false };
  const done = afterPaper(
    { ...ready, writing: true },
    { kind: 'pdf', turn: 3, bytes: new Uint8Array() },
  );
  expect(done).toEqual(ready);
});
