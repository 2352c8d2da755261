import { EXAMPLES } from '@dryflat/record';
import { PERSONS } from '../../../../packages/paper/src/testing/persons.ts';
import { type FileName, garment, LINES, written } from './files-written.ts';

/** Dried, so that a calendar of it can be asked for. */
const DRIED = 'hayloft-pullover';

/** The files of each example; a plan of the mat takes seconds, so those wait for the full run. */
const filesOf = (slug: string, full: boolean): FileName[] =>
  (Object.keys(LINES) as FileName[]).filter(
    (file) => (full || !file.startsWith('mat')) && (file !== 'drying.ics' || slug === DRIED),
  );

export async function* figures(full: boolean) {
  let [files, named, otherwise] = [0, 0, 0];
  for (const { slug } of EXAMPLES) {
    const record = garment(slug);
    const open = { ...record, report: { ...record.report!, body: true } };
    for (const file of filesOf(slug, full)) {
      files += 1;
      const naming = async (of: typeof record) =>
        (await written(of, file)).filter((text) => PERSONS.test(text)).length;
      named += await naming(record);
      otherwise += (await naming(open)) > 0 ? 1 : 0;
    }
  }
  yield {
    name: `persons named in ${files} files of reports, pages and calendars with the private switch off`,
    value: named,
    unit: '',
    goal: { exactly: 0 },
  };
  yield {
    name: 'of the same files, those that name persons with the switch on',
    value: otherwise,
    unit: '',
    goal: { exactly: files },
  };
}
