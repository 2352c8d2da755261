import type { Notice as Said } from '@dryflat/engine/garment';
import { Notice } from '../../kit/index.ts';
import { useSentences } from './craft-sentence.ts';
import './result.css';

/** Notices that quote a name which the knitter gave. */
const QUOTES = new Set([
  'evidence-disagrees',
  'specimens-disagree',
  'tape-against-counts',
  'reading-unused-no-count',
  'reading-unused-no-stretch',
  'reading-unused-outweighed',
  'stretched-below-flat',
  'pinned-beyond-give',
  'pinned-to-points',
  'wet-larger-than-pinned',
]);
const isCaution = ({ code }: Said): boolean => /^(caution-|block-)/.test(code);

/** Notices of the forecast, in the knitter's unit and words; without a label beside what they are of. */
export const Told = ({ label, notices }: { label?: string; notices: readonly Said[] }) => {
  const { plain, own } = useSentences();
  const once = new Map(notices.map((each) => [`${each.code} ${each.text}`, each]));
  if (once.size === 0) return null;
  return (
    <section className="df-notices" aria-label={label}>
      {[...once].map(([key, notice]) => (
        <Notice key={key} tone={isCaution(notice) ? 'plain' : 'unsure'}>
          {(QUOTES.has(notice.code) ? plain : own)(notice.text)}
        </Notice>
      ))}
    </section>
  );
};
