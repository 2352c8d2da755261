import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { examplesIn, pages, refreshed, runExamples } from './lib/docs.mjs';
import { ROOT } from './lib/root.mjs';

const read = (file: string) => readFileSync(join(ROOT, file), 'utf8');

describe.each(pages())('%s', (file) => {
  const page = read(file);

  it('its examples run, and print what it says (npm run docs writes it anew)', () => {
    for (const { line, code, printed, shown } of runExamples(page)) {
      expect({ line, code, printed }).toMatchObject({ line, code: 0 });
      if (shown !== null) expect(printed, `${file}, line ${line}`).toBe(shown);
    }
  });

  it('its links to files lead somewhere', () => {
    const links = [...page.matchAll(/(?:\]\(|src=")(?!https?:|#)([^)"#\s]+)/g)].map(
      ([, link]) => link ?? '',
    );
    const lost = links.filter((link) => !existsSync(join(ROOT, dirname(file), link)));
    expect(lost).toEqual([]);
  });
});

it('the README has examples with output', () => {
  expect(
    examplesIn(read('README.md')).filter(({ shown }) => shown !== null).length,
  ).toBeGreaterThan(2);
});

describe('reading a page', () => {
  const page = 'a\n```sh\necho one\n```\n\n```text\nwrong\n```\nb\n```sh\nfalse\n```\n';

  it('finds scripts, what they show, and where', () => {
    expect(examplesIn(page).map(({ script, shown, line }) => ({ script, shown, line }))).toEqual([
      { script: 'echo one\n', shown: 'wrong\n', line: 2 },
      { script: 'false\n', shown: null, line: 10 },
    ]);
  });

  it('a script that fails or prints something else is seen', () => {
    const [one, two] = runExamples(page);
    expect(one).toMatchObject({ code: 0, printed: 'one\n', shown: 'wrong\n' });
    expect(two?.code).toBe(1);
  });

  it('refreshing replaces what is shown and nothing else', () => {
    expect(refreshed(page)).toBe(page.replace('wrong', 'one'));
  });
});
