import type { Basis } from '@dryflat/engine/fabric';
import type { Measuring, Route } from '@dryflat/engine/routes';
import { Dialog } from '../../kit/index.ts';
import { BasisList } from '../result/basis-list.tsx';
import { useSentences } from '../result/craft-sentence.ts';
import { RouteCosts } from './route-costs.tsx';
import { RouteDrawn } from './route-drawn.tsx';
import { RouteFits } from './route-fits.tsx';
import { useRouteWords } from './route-words.ts';
import { TakeRoute } from './take-route.tsx';

interface RouteSheetProps {
  readonly route: Route;
  readonly routes: readonly Route[];
  readonly measurings: readonly Measuring[];
  readonly bases: readonly Basis[];
  readonly judgedAt: 'dried' | 'worn' | 'rewashed';
  readonly onClose: () => void;
}

/** One route: its forecast drawn on the schematic, what it costs, and why. */
export const RouteSheet = (props: RouteSheetProps) => {
  const { route, bases, judgedAt, onClose } = props;
  const say = useRouteWords();
  return (
    <Dialog
      title={say(route, route.name)}
      onClose={onClose}
      foot={<TakeRoute route={route} onTaken={onClose} />}
    >
      <p className="df-lead">{say(route, route.reasons[0] ?? NOTHING_SAID)}</p>
      <Why {...props} />
      <How route={route} />
      {route.measurements.length > 0 && <RouteDrawn route={route} judgedAt={judgedAt} />}
      <RouteFits route={route} />
      <RouteCosts route={route} />
      {route.dependsOn.length > 0 && (
        <>
          <h3>What it stands on</h3>
          <BasisList bases={bases} ids={route.dependsOn} />
        </>
      )}
    </Dialog>
  );
};

const NOTHING_SAID = 'Nothing is wanted of the fit yet, so it is not judged.';

/** Step by step, where rows are counted. */
const How = ({ route }: { route: Route }) => {
  const say = useRouteWords();
  if (route.steps.length === 0) return null;
  return (
    <>
      <h3>How it is done</h3>
      <ol className="ro-steps">
        {route.steps.map((step) => (
          <li key={step}>{say(route, step)}</li>
        ))}
      </ol>
    </>
  );
};

/** What speaks for it and against it, and what would tell more. */
const Why = ({ route, routes, measurings }: RouteSheetProps) => {
  const say = useRouteWords();
  const { own } = useSentences();
  const better = routes.find(({ id }) => id === route.dominatedBy);
  const first = measurings.find(({ id }) => id === route.measureFirst);
  return (
    <>
      {better && (
        <p className="ro-worse">In nothing better than this: {say(better, better.name)}.</p>
      )}
      <ul className="ro-reasons">
        {route.reasons.slice(1).map((reason) => (
          <li key={reason}>{say(route, reason)}</li>
        ))}
        {first && <li>To be surer: {own(first.name)}.</li>}
      </ul>
    </>
  );
};
