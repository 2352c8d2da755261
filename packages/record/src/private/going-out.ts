import type { GarmentRecord } from '../schema/index.ts';
import { markedText } from '../text/marked.ts';
import { withoutName } from './nameless.ts';

/** How a garment is spoken of in what may be sent: reports, pages, calendars, names of files. */
export interface GoingOut {
  /** What it is called. Never empty. */
  readonly name: string;
  /** The same for the name of a file: letters and numbers of any script, joined by hyphens. */
  readonly fileName: string;
  /** A text of the knitter's as it may be read by others. */
  readonly said: (text: string) => string;
}

/** What a garment is, where nothing else may be said of it; kinds are named after it first. */
const WORDS: Readonly<Record<string, string>> = {
  vest: 'Waistcoat',
  sock: 'Socks',
  mitten: 'Mittens',
  other: 'Garment',
};

const wordOf = ({ kind }: GarmentRecord): string => {
  const [first = ''] = kind.split('-');
  return WORDS[first] ?? `${first.charAt(0).toUpperCase()}${first.slice(1)}`;
};

const fileNameOf = (name: string): string =>
  name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');

const named = (name: string, record: GarmentRecord): Omit<GoingOut, 'said'> => {
  const fileName = fileNameOf(name);
  return fileName === ''
    ? { name: wordOf(record), fileName: fileNameOf(wordOf(record)) }
    : { name: name.trim(), fileName };
};

/** Signs that steer whatever shows a text have become marks. */
const shown = (text: string): string => markedText(text, true);

/** Nobody of whom the record has a name is named. */
const nobody = ({ wearer, people = [] }: GarmentRecord): GoingOut['said'] => {
  const each = [
    withoutName(wearer.name, 'the wearer'),
    ...people.map(({ name }) => withoutName(name, 'somebody')),
  ];
  return (text) => each.reduce((said, without) => without(said), text);
};

/**
 * `withPersons` is the switch of the report, off until it is chosen. Off, a garment goes by the name of
 * its pattern, or by what it is: its own name may be somebody's whom the record does not know. Every
 * name that the record knows is taken out of all texts. On, everything is as the knitter wrote it.
 */
export const goingOut = (
  record: GarmentRecord,
  withPersons: boolean = record.report?.body ?? false,
): GoingOut => {
  if (withPersons) return { ...named(shown(record.name), record), said: shown };
  const unsaid = nobody(record);
  const { name } = record.pattern;
  const own = unsaid(name) === name.normalize('NFC') ? shown(name) : '';
  return { ...named(own, record), said: (text) => unsaid(shown(text)) };
};
