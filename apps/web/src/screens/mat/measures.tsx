import { memo } from 'react';
import { useLandmarkName, useLengths } from '../../kit/index.ts';
import type { Lying, Planned } from '../../worker/mat/index.ts';
import { letterOf } from './measure-lines.tsx';

/** Less than a mark of the tape is no change, mm. */
const SEEN = 0.5;

/** What each measure comes to: as pinned now, as planned with its range, dry, and after a rewash. */
export const Measures = memo(({ planned, lying }: { planned: Planned; lying: Lying | null }) => {
  const { length, range } = useLengths();
  const name = useLandmarkName();
  return (
    <ul className="df-measures">
      {planned.plan.measurements.map((each, k) => {
        const planned50 = each.reachedMm.p50Mm;
        const now = lying?.reached[k] ?? planned50;
        const within = Math.abs(now - each.targetMm) <= each.toleranceMm;
        const moved = Math.abs(now - planned50) > SEEN;
        return (
          <li key={each.name} data-within={within || undefined}>
            <h3>
              <span className="df-measure-letter" aria-hidden="true">
                {letterOf(k)}
              </span>
              {name(each.landmark)}
            </h3>
            <p className="df-measure-now">
              <strong className="df-mm">{length(now)}</strong> pinned
              <span className="df-verdict">{verdict(now - each.targetMm, within, length)}</span>
            </p>
            <dl>
              <Row term={`lies wet`}>{length(each.restMm)}</Row>
              <Row term="wanted">{length(each.targetMm)}</Row>
              <Row term={moved ? 'as planned' : 'pinned, 9 times in 10'}>
                {range(each.reachedMm.p05Mm, each.reachedMm.p95Mm)}
              </Row>
              <Row term="dry and unpinned">
                {range(each.afterDryingMm.p05Mm, each.afterDryingMm.p95Mm)}
              </Row>
              <Row term="after a rewash without pins">
                {range(each.afterRewashMm.p05Mm, each.afterRewashMm.p95Mm)}
              </Row>
            </dl>
          </li>
        );
      })}
    </ul>
  );
});

const verdict = (off: number, within: boolean, length: (mm: number) => string): string => {
  if (within) return 'reached';
  return off < 0 ? `${length(-off)} short` : `${length(off)} over`;
};

const Row = ({ term, children }: { term: string; children: string }) => (
  <div>
    <dt>{term}</dt>
    <dd>{children}</dd>
  </div>
);
