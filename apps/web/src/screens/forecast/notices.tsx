import type { Forecast, Notice as Said } from '@dryflat/engine/garment';
import { faultsOf, isDoubt } from '@dryflat/record';
import { useMemo } from 'react';
import { Disclosure, Notice } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { MendList } from '../result/mend-list.tsx';

/** Notices that quote a name which the knitter gave. */
const QUOTES = new Set(['evidence-disagrees', 'stretched-below-flat', 'pinned-beyond-give']);
const isCaution = ({ code }: Said): boolean => code.startsWith('caution-');

/** What to know beside the numbers: wide assumptions, evidence that disagrees, cautions. */
export const Notices = ({ forecast }: { forecast: Forecast }) => {
  const { plain, own } = useSentences();
  const { notices } = forecast;
  const sorted = [...notices].sort((a, b) => Number(isCaution(a)) - Number(isCaution(b)));
  return (
    <>
      {sorted.length > 0 && (
        <section className="df-notices" aria-label="Worth knowing">
          {sorted.map((notice) => (
            <Notice
              key={`${notice.code} ${notice.text}`}
              tone={isCaution(notice) || notice.code === 'block-not-permanent' ? 'plain' : 'unsure'}
            >
              {(QUOTES.has(notice.code) ? plain : own)(notice.text)}
            </Notice>
          ))}
        </section>
      )}
      <Doubts />
    </>
  );
};

/** Numbers that are possible and unlikely. */
const Doubts = () => {
  const { record } = useGarment();
  const doubts = useMemo(() => faultsOf(record).filter(isDoubt), [record]);
  if (doubts.length === 0) return null;
  const title = doubts.length === 1 ? 'One number looks odd' : `${doubts.length} numbers look odd`;
  return (
    <Disclosure level={2} title={title}>
      <MendList id={record.id} faults={doubts} />
    </Disclosure>
  );
};
