import type { MatWork } from '@dryflat/record';
import { pieceWord } from '../mat/mat-words.ts';

/** A piece by its name and which of several alike it is. */
export const workName = ({ piece, copy }: Pick<MatWork, 'piece' | 'copy'>): string =>
  copy ? `${pieceWord(piece)}, ${copy}` : pieceWord(piece);
