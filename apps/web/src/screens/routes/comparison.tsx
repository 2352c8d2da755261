import type { Route } from '@dryflat/engine/routes';
import { Icon } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { hoursRange } from '../result/hours-words.ts';
import { useRouteWords } from './route-words.ts';
import { shortPercent } from './short-percent.ts';

/** All routes in their order, four numbers each: read at a glance, opened for the rest. */
export const Comparison = ({
  routes,
  ordered,
  why,
  onOpen,
}: {
  routes: readonly Route[];
  /** Why the first is first; null while they are still arriving. */
  why: string | null;
  /** False while they are still arriving: then they have no numbers yet. */
  ordered: boolean;
  onOpen: (id: string) => void;
}) => (
  <ol className="ro-list" aria-label={ordered ? 'Routes, best first' : 'Routes so far'}>
    {routes.map((route, at) => (
      <Row
        key={route.id}
        route={route}
        place={ordered ? at + 1 : null}
        why={at === 0 ? why : null}
        better={routes.findIndex(({ id }) => id === route.dominatedBy) + 1}
        onOpen={() => onOpen(route.id)}
      />
    ))}
  </ol>
);

interface RowProps {
  readonly route: Route;
  readonly place: number | null;
  readonly why: string | null;
  /** Place of a route that is at least as good in all and better in one; 0 where none is. */
  readonly better: number;
  readonly onOpen: () => void;
}

const Row = ({ route, place, why, better, onOpen }: RowProps) => {
  const say = useRouteWords();
  const worse = better > 0 && place !== null;
  return (
    <li className="ro-row" data-first={place === 1 || undefined} data-worse={worse || undefined}>
      <button type="button" className="ro-name" onClick={onOpen}>
        {place !== null && <span className="ro-place">{place}</span>}
        <span className="ro-words">
          {say(route, route.name)}
          {route.planned && (
            <>
              {' '}
              <span className="df-kind">the plan</span>
            </>
          )}
          {worse && <span className="ro-worse">No better than number {better} in anything</span>}
        </span>
        <Icon name="onward" />
      </button>
      <Numbers route={route} />
      {why !== null && <p className="ro-why">{why}</p>}
    </li>
  );
};

const Numbers = ({ route }: { route: Route }) => {
  const { record } = useGarment();
  return (
    <dl className="ro-numbers">
      <Chance name="Fits" chance={route.chanceAllFit} none="not judged" />
      {record.plan.finishBy !== undefined && (
        <Chance name="In time" chance={route.chanceByDate} none="never" />
      )}
      <Chance name="Yarn" chance={route.chanceOfYarn} none="not known" />
      <div>
        <dt>Work</dt>
        <dd>{hoursRange(route.hours.total)}</dd>
      </div>
    </dl>
  );
};

const Chance = ({ name, chance, none }: { name: string; chance: number | null; none: string }) => (
  <div>
    <dt>{name}</dt>
    <dd>
      {chance === null ? <span className="ro-none">{none}</span> : shortPercent(chance)}
      {chance !== null && (
        <span className="ro-bar" aria-hidden="true">
          <i style={{ width: `${100 * chance}%` }} />
        </span>
      )}
    </dd>
  </div>
);
