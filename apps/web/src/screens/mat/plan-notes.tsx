import type { OrderTried } from '@dryflat/engine/blocking';
import { memo } from 'react';
import { Card, landmarkName, Notice, useLandmarkName, useLengths } from '../../kit/index.ts';
import { useView } from '../../store/index.ts';
import type { Planned } from '../../worker/mat/index.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { percent, pullWords, WAY_WORDS } from './mat-words.ts';

const useNamed = (planned: Planned): ((text: string) => string) =>
  useNamedText(planned.plan.measurements.map(({ landmark }) => landmark));

/** Sentences of a plan begin with or hold the name of a landmark by its id. */
export const useNamedText = (landmarks: readonly string[]): ((text: string) => string) => {
  const { words } = useView();
  const { own } = useSentences();
  const ids = [...landmarks].sort((a, b) => b.length - a.length);
  return (text) => {
    const named = ids.reduce(
      (told, id) =>
        id.includes('-') || told.startsWith(`${id}:`)
          ? told.replaceAll(id, landmarkName(id, words).toLowerCase())
          : told,
      text,
    );
    const said = own(named);
    return `${said.charAt(0).toUpperCase()}${said.slice(1)}`;
  };
};

/** What was wanted and is not reached, and why; what more pins would give. */
export const CouldNot = memo(({ planned }: { planned: Planned }) => {
  const told = useNamed(planned);
  const { couldNot, moreStock } = planned.plan;
  return (
    <Card title="What it will not do">
      {couldNot.length === 0 ? (
        <p>Everything that was wanted is reached.</p>
      ) : (
        <ul className="df-plain-list">
          {couldNot.map(({ what, why }) => (
            <li key={what}>
              <strong>{told(what)}</strong>:{' '}
              {told(why).replace(/^./, (first) => first.toLowerCase())}.
            </li>
          ))}
        </ul>
      )}
      {moreStock.length > 0 && (
        <>
          <h3>What more pins would buy</h3>
          <ul className="df-plain-list">
            {moreStock.map(({ what, gains }) => (
              <li key={what}>
                <strong>{what}</strong>: {told(gains).replace(/^./, (first) => first.toLowerCase())}
                .
              </li>
            ))}
          </ul>
        </>
      )}
    </Card>
  );
});

/** A rise of less is nothing on a tape, mm. */
const RISES = 1;

/** What else happens in an order: pins that slip, and a lower edge that rises. */
const fares = (
  { slipped, lowerEdgeRisesMm }: OrderTried,
  length: (mm: number) => string,
): string => {
  const slips = slipped === 0 ? 'none slips' : `${slipped} would slip`;
  const rises = `; the lower edge rises by ${length(lowerEdgeRisesMm)} before it is pinned`;
  return `, and ${slips}${lowerEdgeRisesMm < RISES ? '' : rises}`;
};

/** How pins fare in this order and in another; and the same pins with less stretch. */
export const OrderAndEase = memo(({ planned }: { planned: Planned }) => {
  const { length } = useLengths();
  const name = useLandmarkName();
  const { orders, gentler, beforeSewing, scallopMm, measurements } = planned.plan;
  const called = (id: string) => {
    const found = measurements.find((each) => each.name === id);
    return found ? name(found.landmark) : id;
  };
  return (
    <Card title="Order, and a gentler pull">
      {orders.planned && (
        <p>
          In this order, {WAY_WORDS[orders.planned.way]}, the pin that bears most on the way is{' '}
          <strong>{pullWords(orders.planned.highestPullN)}</strong>
          {fares(orders.planned, length)}.{' '}
          {orders.other && (
            <>
              With the same pins {WAY_WORDS[orders.other.way]} it would be{' '}
              <strong>{pullWords(orders.other.highestPullN)}</strong>
              {fares(orders.other, length)}.
            </>
          )}
        </p>
      )}
      <p>
        Between two pins the edge draws in by <strong>{length(scallopMm.max)}</strong> at the
        deepest.
      </p>
      {gentler.length > 1 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
        <section className="df-scroll-table" tabIndex={0} aria-label="With less stretch">
          <table>
            <caption>The same pins with less stretch</caption>
            <thead>
              <tr>
                <td />
                {gentler.map((each, k) => (
                  <th scope="col" key={each.share}>
                    {k === 0 ? 'as planned' : `${percent(each.share)} of it`}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {gentler[0]!.reached.map(({ name: id }, row) => (
                <tr key={id}>
                  <th scope="row">{called(id)}</th>
                  {gentler.map((each) => (
                    <td key={each.share}>{length(each.reached[row]!.mm)}</td>
                  ))}
                </tr>
              ))}
              <tr>
                <th scope="row">Largest stretch over its wet size</th>
                {gentler.map((each) => (
                  <td key={each.share}>
                    {percent(each.largestStretch)}
                    {each.beyondSafe.length > 0 && ', beyond what is called safe'}
                  </td>
                ))}
              </tr>
            </tbody>
          </table>
        </section>
      )}
      {beforeSewing && (
        <p>
          Blocked before it was sewn, the same wish would have given{' '}
          {beforeSewing
            .map(({ name: id, mm }) => `${called(id).toLowerCase()} ${length(mm)}`)
            .join(', ')}
          .
        </p>
      )}
    </Card>
  );
});

const COUNT = 'count-pins';
const TOO_LARGE = 'mat-too-small';
const BEFORE_PINS = [COUNT, TOO_LARGE, 'one-at-a-time'];

/** Notices of the plan that are doubts. */
const Unsure = memo(({ planned, of }: { planned: Planned; of: (code: string) => boolean }) => {
  const told = useNamed(planned);
  return planned.whole.notices
    .filter(({ code }) => of(code))
    .map(({ code, text }) => (
      <Notice key={code} tone="unsure">
        {told(text)}
      </Notice>
    ));
});

const isTooLarge = (code: string): boolean => code === TOO_LARGE;
const isDoubt = (code: string): boolean => !BEFORE_PINS.includes(code);

/** That the mat is too small, and what would do: before anything else. */
export const TooLarge = ({ planned }: { planned: Planned }) => (
  <Unsure planned={planned} of={isTooLarge} />
);

/** Doubts of the plan: beside the mat. */
export const PlanDoubts = ({ planned }: { planned: Planned }) => (
  <Unsure planned={planned} of={isDoubt} />
);

/** What to mind before the first pin: beside the list of pins. */
export const PinCaution = memo(({ planned }: { planned: Planned }) => {
  const told = useNamed(planned);
  return planned.whole.notices
    .filter(({ code }) => code === COUNT)
    .map(({ code, text }) => <Notice key={code}>{told(text)}</Notice>);
});
