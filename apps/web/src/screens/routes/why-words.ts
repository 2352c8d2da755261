import type { RoutesResult } from '@dryflat/engine/routes';

/** Why the first is first, the names of the first two exchanged for their places: they stand beside it. */
export const whyWords = ({
  sentence,
  routes,
}: Pick<RoutesResult, 'sentence' | 'routes'>): string => {
  const [first, second] = routes;
  return [first && [first.name, 'This'], second && [second.name, 'number 2']]
    .filter((each) => each !== undefined)
    .reduce((said, [name, words]) => said.replaceAll(`“${name}”`, `${words}`), sentence)
    .replaceAll('. number 2', '. Number 2')
    .replaceAll(' %', '\u00a0%');
};
