import type { Faces } from '@dryflat/paper';
import type { Surroundings } from './surroundings.ts';

/** The maker of pages; it is loaded only by the commands that make any. */
export type Paper = typeof import('@dryflat/paper');

/** A PDF names a moment; as the same file gives the same bytes, it is this one and no clock's. */
export const NO_TIME = new Date(0);

/** The letters that pages are set in, from the installed packages. */
export const facesOf = async (paper: Paper, surroundings: Surroundings): Promise<Faces> => {
  const fonts = paper.FACE_FILES.map(
    async ({ name, file }) => [name, await surroundings.font(file)] as const,
  );
  return paper.facesFrom(new Map(await Promise.all(fonts)));
};
