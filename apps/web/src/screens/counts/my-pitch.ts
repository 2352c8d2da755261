import type { Pitch } from '@dryflat/engine/counts';
import type { GaugeForecast } from '@dryflat/engine/garment';
import { mm } from '@dryflat/engine/units';
import type { Pattern } from '@dryflat/record';

export type GaugeState = 'dried' | 'asKnit';

/** The likeliest gauge in a state of the fabric. */
export const myPitch = ({ stitch, row }: GaugeForecast, state: GaugeState): Pitch => ({
  stitch: mm(stitch[state].p50Mm),
  row: mm(row[state].p50Mm),
  state,
});

/** The pattern's gauge, with mine in the state that it was counted in; null where it gives none, or its stitches only. */
export const patternPitches = (
  { gauge }: Pick<Pattern, 'gauge'>,
  forecast: GaugeForecast,
): { readonly theirs: Pitch; readonly mine: Pitch } | null =>
  gauge?.rows === undefined
    ? null
    : {
        theirs: {
          stitch: mm(gauge.overMm / gauge.stitches),
          row: mm(gauge.overMm / gauge.rows),
          state: gauge.state,
        },
        mine: myPitch(forecast, gauge.state),
      };
