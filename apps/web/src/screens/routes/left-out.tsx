import type { RouteLeftOut } from '@dryflat/engine/routes';
import { Disclosure } from '../../kit/index.ts';
import { useRouteWords } from './route-words.ts';

/** Routes that are not open, and why; none is hidden. */
export const LeftOut = ({ routes }: { routes: readonly RouteLeftOut[] }) => {
  const say = useRouteWords();
  if (routes.length === 0) return null;
  return (
    <Disclosure level={2} title={`Not open now: ${routes.length}`}>
      <ul className="df-list">
        {routes.map((each) => (
          <li key={`${each.kind} ${each.name}`}>
            <strong>{say(each, each.name)}.</strong> {say(each, each.why)}
          </li>
        ))}
      </ul>
    </Disclosure>
  );
};
