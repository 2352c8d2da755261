import type { Route } from '@dryflat/engine/routes';
import { Icon } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { chancePercent } from '../result/chance-words.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { hoursRange } from '../result/hours-words.ts';

/** All routes in their order, four numbers each: read at a glance, opened for the rest. */
export const Comparison = ({
  routes,
  ordered,
  onOpen,
}: {
  routes: readonly Route[];
  /** False while they are still arriving: then they have no numbers yet. */
  ordered: boolean;
  onOpen: (id: string) => void;
}) => (
  <>
    <div className="ro-heads" aria-hidden="true">
      <span>Fits</span>
      <span>In time</span>
      <span>Yarn lasts</span>
      <span>Hours of work</span>
    </div>
    <ol className="ro-list">
      {routes.map((route, at) => (
        <Row
          key={route.id}
          route={route}
          place={ordered ? at + 1 : null}
          better={routes.findIndex(({ id }) => id === route.dominatedBy) + 1}
          onOpen={() => onOpen(route.id)}
        />
      ))}
    </ol>
  </>
);

const Row = ({
  route,
  place,
  better,
  onOpen,
}: {
  route: Route;
  place: number | null;
  /** Place of a route that is better in every way; 0 where none is. */
  better: number;
  onOpen: () => void;
}) => {
  const { plain } = useSentences();
  const { record } = useGarment();
  return (
    <li className="ro-row" data-worse={better > 0 || undefined}>
      <button type="button" className="ro-name" onClick={onOpen}>
        {place !== null && <span className="ro-place">{place}</span>}
        <span>
          {plain(route.name)}
          {route.planned && <span className="df-kind"> as planned</span>}
        </span>
        <Icon name="onward" />
      </button>
      <dl className="ro-numbers">
        <Chance name="Fits" chance={route.chanceAllFit} none="not judged" />
        <Chance
          name="In time"
          chance={route.chanceByDate}
          none={record.plan.finishBy ? 'not known' : 'no date'}
        />
        <Chance name="Yarn lasts" chance={route.chanceOfYarn} none="not weighed" />
        <div>
          <dt className="df-unseen">Hours of work</dt>
          <dd>{hoursRange(route.hours.total)}</dd>
        </div>
      </dl>
      {better > 0 && place !== null && (
        <p className="ro-worse">Worse in every way than number {better}.</p>
      )}
    </li>
  );
};

const Chance = ({ name, chance, none }: { name: string; chance: number | null; none: string }) => (
  <div>
    <dt className="df-unseen">{name}</dt>
    <dd>
      {chance === null ? <span className="df-soft">{none}</span> : chancePercent(chance)}
      {chance !== null && (
        <span className="ro-bar" aria-hidden="true">
          <i style={{ width: `${100 * chance}%` }} />
        </span>
      )}
    </dd>
  </div>
);
