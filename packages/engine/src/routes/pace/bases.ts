import type { Basis } from '../../fabric/index.ts';
import { KEPT_SD, LONG_RUN_SD } from './assumptions.ts';
import type { PaceQuestion } from './types.ts';

const practice = (id: string, text: string): Basis => ({
  id,
  kind: 'common-practice',
  text,
  source: null,
});
const assumed = (id: string, text: string): Basis => ({
  id,
  kind: 'assumption',
  text,
  source: null,
});

/** What the forecast stands on. */
export const basesOf = (question: PaceQuestion): Basis[] => {
  const { log, parts, finishing, dryingHours, yarn } = question;
  const has = (kind: string): boolean => parts.some(({ fabric }) => fabric === kind);
  return [
    ...(log.length > 0
      ? [
          {
            id: 'pace-timed',
            kind: 'measured' as const,
            text: `${log.length} timed sitting${log.length === 1 ? '' : 's'} of this knitter`,
            source: null,
          },
        ]
      : []),
    practice('pace-prior', 'Before any timing: 15 to 40 stitches a minute in plain fabric'),
    ...(has('worked')
      ? [practice('pace-worked', 'Crossed, turned or coloured stitches go at about half the pace')]
      : []),
    ...(has('ripped')
      ? [practice('pace-ripped', 'Ripping goes five to twenty times as fast as knitting')]
      : []),
    assumed(
      'pace-long-run',
      `Whole evenings differ from timed rows by ${LONG_RUN_SD * 100} % (SD), and hours had from hours meant by ${KEPT_SD * 100} %`,
    ),
    ...(finishing !== null
      ? [
          practice(
            'pace-finishing',
            '{mm:100} of seam take 4 to 12 minutes, an end 1½ to 5 minutes',
          ),
        ]
      : []),
    ...(dryingHours !== null
      ? [assumed('pace-drying', 'Washing begins on the evening of the last day of work, at eight')]
      : []),
    ...(yarn !== null
      ? [assumed('pace-shop', 'Yarn comes about when it was promised, within 25 % (SD)')]
      : []),
  ];
};
