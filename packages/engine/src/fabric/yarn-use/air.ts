import { blendRegain, type FibreShare } from '../../textile/index.ts';
import { fail, ok, type Result } from '../../units/index.ts';
import type { Ratio } from './assumptions.ts';

/** Without fibres: between fibres that hold no water and wool, in rooms dry or damp. Assumption. */
const UNKNOWN: Ratio = { mean: 0, sd: 0.02 };
/** Rooms are drier or damper than the standard 65 %. Assumption. */
const ROOM_SD = 0.01;

/**
 * Log of what a yarn weighs in a room over what its label says. Labels count the regain that is
 * agreed in trade, by one convention or another; a scale weighs the regain that there is:
 * mass · (1 + real) / (1 + agreed).
 */
export const labelAir = (fibres: readonly FibreShare[]): Result<Ratio> => {
  if (fibres.length === 0) return ok(UNKNOWN);
  const [real, commercial, agreed] = (['real', 'commercial', 'agreed'] as const).map((kind) =>
    blendRegain(fibres, kind),
  );
  if (!real!.ok || !commercial!.ok || !agreed!.ok) return fail(...(real!.ok ? [] : real!.faults));
  const least = Math.min(commercial!.value.low, agreed!.value.low);
  const most = Math.max(commercial!.value.high, agreed!.value.high);
  const [low, high] = [
    Math.log((1 + real!.value.low) / (1 + most)),
    Math.log((1 + real!.value.high) / (1 + least)),
  ];
  return ok({ mean: (low + high) / 2, sd: Math.hypot((high - low) / Math.sqrt(12), ROOM_SD) });
};
