import type { Route, RouteLeftOut } from '@dryflat/engine/routes';
import { useCallback } from 'react';
import { useView } from '../../store/index.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { inYarnUnit } from './yarn-words.ts';

/**
 * What the engine says of a route, in the knitter's units and English. Routes to other people carry
 * names that somebody gave: their words are left alone.
 */
export const useRouteWords = () => {
  const { plain, own } = useSentences();
  const { units } = useView();
  return useCallback(
    ({ kind }: Pick<Route | RouteLeftOut, 'kind'>, text: string): string =>
      (kind === 'give' ? plain : own)(inYarnUnit(text, units)).replaceAll(' %', '\u00a0%'),
    [plain, own, units],
  );
};
