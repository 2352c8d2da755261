// @ts-check
import { rounded } from './measuring.mjs';

/**
 * What a figure has to be: a number, or one bound of it, both allowed.
 * @typedef {{ most: number } | { least: number } | { exactly: number }} Goal
 *
 * @typedef {object} Figure as a file of figures gives it
 * @property {string} name what was measured, of what and how many
 * @property {number} value as measured in this run
 * @property {string} unit empty for a ratio
 * @property {Goal} goal
 *
 * @typedef {{ topic: string, name: string, value: number, unit: string, goal: string, holds: boolean }} Line
 */

/**
 * @param {number} value
 * @param {Goal} goal
 */
export const holds = (value, goal) => {
  if ('most' in goal) return value <= goal.most;
  return 'least' in goal ? value >= goal.least : value === goal.exactly;
};

/** @param {Goal} goal */
export const goalText = (goal) => {
  if ('most' in goal) return `≤ ${goal.most}`;
  return 'least' in goal ? `≥ ${goal.least}` : `${goal.exactly}`;
};

/**
 * All figures of a topic, each told as it comes; null where one of its files threw, which is heard of: the
 * others are measured all the same.
 * @param {string} topic
 * @param {readonly string[]} files
 * @param {(file: string) => Promise<AsyncIterable<Figure>>} figuresOf
 * @param {{ tell: (line: Line) => void, threw: (file: string, error: unknown) => void }} hear
 */
export const linesOf = async (topic, files, figuresOf, { tell, threw }) => {
  /** @type {Line[] | null} */
  let lines = [];
  for (const file of files) {
    try {
      for await (const { name, value, unit, goal } of await figuresOf(file)) {
        const told = { topic, name, value: rounded(value), unit, goal: goalText(goal) };
        const line = { ...told, holds: holds(value, goal) };
        tell(line);
        lines?.push(line);
      }
    } catch (error) {
      lines = null;
      threw(file, error);
    }
  }
  return lines;
};

/** @param {Line} line */
const row = ({ name, value, unit, goal, holds }) =>
  `| ${name} | ${value}${unit === '' ? '' : ` ${unit}`} | ${goal} | ${holds ? 'yes' : '**no**'} |`;

/**
 * The page of figures with the section of one topic written anew, the others as they stand; without figures,
 * so does that one.
 * @param {string} page
 * @param {string} topic
 * @param {readonly Line[] | null} lines
 */
export const withTopic = (page, topic, lines) => {
  if (lines === null) return page;
  const [head = '', ...sections] = page.trimEnd().split(/\n(?=## )/);
  const table = ['| figure | measured | goal | holds |', '|---|---|---|---|', ...lines.map(row)];
  const made = [`## ${topic}`, '', ...table].join('\n');
  const others = sections.filter((each) => each.split('\n', 1)[0] !== `## ${topic}`);
  return `${[head, ...[...others, made].sort()].map((each) => each.trimEnd()).join('\n\n')}\n`;
};
