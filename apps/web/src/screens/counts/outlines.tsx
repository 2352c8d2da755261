import type { OutlinePiece } from '@dryflat/engine/garment';
import { placeOutlines } from './place-outlines.ts';

export interface ShownOutline {
  readonly as: 'wanted' | 'counts' | 'other';
  /** What it is, for the key. */
  readonly label: string;
  readonly outline: OutlinePiece;
}

/** Outlines laid on each other to scale, with a key: what is wanted, and what counts give. */
export const Outlines = ({ title, shown }: { title: string; shown: readonly ShownOutline[] }) => {
  if (shown.length === 0) return null;
  const { placed, box } = placeOutlines(shown.map(({ outline }) => outline));
  // Room for the lines themselves.
  const pad = 0.02 * Math.max(box.right - box.left, box.bottom - box.top);
  const view = [
    box.left - pad,
    box.top - pad,
    box.right - box.left + 2 * pad,
    box.bottom - box.top + 2 * pad,
  ].map((each) => Math.round(each * 10) / 10);
  return (
    <figure className="co-drawing">
      <svg viewBox={view.join(' ')} role="img" aria-label={title}>
        {placed.map(({ edge, ribbing }, i) => (
          <g key={shown[i]!.as} data-as={shown[i]!.as}>
            <path d={edge} />
            {ribbing !== '' && <path data-detail d={ribbing} />}
          </g>
        ))}
      </svg>
      <figcaption>
        {shown.map(({ as, label }) => (
          <span key={as} className="co-key" data-as={as}>
            <svg viewBox="0 0 24 8" aria-hidden="true">
              <path d="M1 4h22" />
            </svg>
            {label}
          </span>
        ))}
      </figcaption>
    </figure>
  );
};
