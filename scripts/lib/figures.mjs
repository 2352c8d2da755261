// @ts-check

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

/** @param {Line} line */
const row = ({ name, value, unit, goal, holds }) =>
  `| ${name} | ${value}${unit === '' ? '' : ` ${unit}`} | ${goal} | ${holds ? 'yes' : '**no**'} |`;

/**
 * The page of figures with the section of one topic written anew, the others as they stand.
 * @param {string} page
 * @param {string} topic
 * @param {readonly Line[]} lines
 */
export const withTopic = (page, topic, lines) => {
  const [head = '', ...sections] = page.trimEnd().split(/\n(?=## )/);
  const table = ['| figure | measured | goal | holds |', '|---|---|---|---|', ...lines.map(row)];
  const made = [`## ${topic}`, '', ...table].join('\n');
  const others = sections.filter((each) => each.split('\n', 1)[0] !== `## ${topic}`);
  return `${[head, ...[...others, made].sort()].map((each) => each.trimEnd()).join('\n\n')}\n`;
};
