import { FIBRES, type Fibre } from '@dryflat/engine/textile';
import { fail, ok, type Result } from '@dryflat/engine/units';
import type { Yarn } from '@dryflat/record';
import { parseCount } from '../../kit/parse-count.ts';

type Shares = Yarn['fibres'];

/** What is missing to 100 %, to a hundredth; negative where there is too much. */
export const missingShare = (fibres: Shares): number =>
  Math.round((100 - fibres.reduce((sum, { percent }) => sum + percent, 0)) * 100) / 100;

/** Labels round each share to a whole percent, so three fibres may miss 100 by one and a half. */
export const SHARE_SLACK = 1.5;

/** Fibres that are not in the yarn yet. */
export const freeFibres = (fibres: Shares): Fibre[] =>
  FIBRES.filter((each) => !fibres.some(({ fibre }) => fibre === each));

/** Adds a fibre with the share that is missing; where none is, with 10 for the knitter to correct. */
export const addFibre = (fibres: Shares, fibre: Fibre): void => {
  const missing = missingShare(fibres);
  fibres.push({ fibre, percent: missing > 0 ? missing : 10 });
};

/** A share in percent: `80`, `80 %`, `12,5`. More than 0, at most 100. */
export const readShare = (text: string, field: string): Result<number> => {
  const read = parseCount(text.replace(/\s*%\s*$/, ''), field);
  if (!read.ok || read.value <= 100) return read.ok ? ok(read.value) : read;
  return fail({
    code: 'share-out-of-range',
    field,
    given: text,
    problem: 'a share is at most 100 %',
    mend: 'Write the share that the label gives.',
  });
};
