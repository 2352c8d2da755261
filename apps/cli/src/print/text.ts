/** Columns of a terminal that the output keeps within. */
export const COLUMNS = 80;

/** Columns that a text takes; all that is printed here is one column a character. */
export const widthOf = (text: string): number => [...text].length;

export const padEnd = (text: string, width: number): string =>
  text + ' '.repeat(Math.max(0, width - widthOf(text)));

export const padStart = (text: string, width: number): string =>
  ' '.repeat(Math.max(0, width - widthOf(text))) + text;

/**
 * Lines of at most `width` columns, broken at spaces (not at those that do not break); a longer word
 * has a line of its own.
 */
export const wrap = (text: string, width: number): string[] => {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \n]+/).filter((each) => each !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && widthOf(longer) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' && lines.length > 0 ? lines : [...lines, line];
};

/** A text after a mark, its later lines hanging under its first. */
export const hanging = (mark: string, text: string, width = COLUMNS): string[] => {
  const indent = ' '.repeat(widthOf(mark));
  return wrap(text, width - indent.length).map((line, at) => (at === 0 ? mark : indent) + line);
};

/** What is in every list, each once; and what is in one and not in every other. */
export const inCommon = (lists: readonly (readonly string[])[]) => {
  const [first = [], ...others] = lists;
  const common = new Set(first.filter((text) => others.every((each) => each.includes(text))));
  return {
    common: [...common],
    own: lists.map((each) => [...new Set(each)].filter((text) => !common.has(text))),
  };
};
