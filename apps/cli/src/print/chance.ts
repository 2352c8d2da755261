import { percentText } from '@dryflat/engine/stats';

/** A chance in whole percent, its ends `under 1 %` and `over 99 %`. The space inside does not break. */
export const chanceText = (chance: number): string => percentText(chance).replaceAll(' ', '\u00a0');
