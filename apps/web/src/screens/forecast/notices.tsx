import type { Forecast } from '@dryflat/engine/garment';
import { faultsBesidePhotos, isDoubt } from '@dryflat/record';
import { useMemo } from 'react';
import { Disclosure } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { MendList } from '../result/mend-list.tsx';
import { Told } from '../result/told.tsx';

/** Notices about washing, pinning and drying stand beside those choices. */
const OF_CARE = /^(caution-|block-|pinned-|wet-larger|mass-guessed)/;

/** What to know before trusting the numbers: wide assumptions, evidence that disagrees. */
export const Notices = ({ forecast }: { forecast: Forecast }) => (
  <>
    <Told
      label="Worth knowing"
      notices={forecast.notices.filter(({ code }) => !OF_CARE.test(code))}
    />
    <Doubts />
  </>
);

/** What to know when it is washed, pinned and dried. */
export const CareNotices = ({ forecast }: { forecast: Forecast }) => (
  <Told
    label="When it is washed and dried"
    notices={forecast.notices.filter(({ code }) => OF_CARE.test(code))}
  />
);

/** Numbers that are possible and unlikely. */
const Doubts = () => {
  const { record } = useGarment();
  const doubts = useMemo(() => faultsBesidePhotos(record).filter(isDoubt), [record]);
  if (doubts.length === 0) return null;
  const title = doubts.length === 1 ? 'One number looks odd' : `${doubts.length} numbers look odd`;
  return (
    <Disclosure level={2} title={title}>
      <MendList id={record.id} faults={doubts} />
    </Disclosure>
  );
};
