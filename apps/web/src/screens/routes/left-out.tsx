import type { RouteLeftOut } from '@dryflat/engine/routes';
import { Disclosure } from '../../kit/index.ts';
import { useSentences } from '../result/craft-sentence.ts';

/** Routes that are not open, and why; none is hidden. */
export const LeftOut = ({ routes }: { routes: readonly RouteLeftOut[] }) => {
  const { plain } = useSentences();
  if (routes.length === 0) return null;
  return (
    <Disclosure level={2} title={`Not open now: ${routes.length}`}>
      <ul className="df-list">
        {routes.map(({ kind, name, why }) => (
          <li key={`${kind} ${name}`}>
            <strong>{plain(name)}.</strong> {plain(why)}
          </li>
        ))}
      </ul>
    </Disclosure>
  );
};
