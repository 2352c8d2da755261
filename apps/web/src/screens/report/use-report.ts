import type { ReportChoices } from '@dryflat/record';
import { useCallback } from 'react';
import { useGarment } from '../../store/index.ts';

/** Nothing said yet; what is private stays out. */
export const NO_REPORT: ReportChoices = { changes: '', fitNotes: '', photos: [], body: false };

/** What the report of the open garment says and leaves out, and the way to change it. */
export const useReport = (): readonly [
  ReportChoices,
  (recipe: (report: ReportChoices) => void) => void,
] => {
  const { record, change } = useGarment();
  const edit = useCallback(
    (recipe: (report: ReportChoices) => void) =>
      change((draft) => {
        draft.report ??= { ...NO_REPORT, photos: [] };
        recipe(draft.report);
      }),
    [change],
  );
  return [record.report ?? NO_REPORT, edit];
};
