import { routes, sizeByNeedle } from '@dryflat/engine/routes';
import { fail, ok, type Result } from '@dryflat/engine/units';
import { refused, type Units } from '../faults.ts';
import { called } from '../files.ts';
import { routesJson } from '../json/routes-json.ts';
import { faultsIn, oneOf, wholeNumber } from '../options.ts';
import { routesReport } from '../print/routes/report.ts';
import { styleFor } from '../print/style.ts';
import type { Words } from '../print/words.ts';
import { done, type Ending, type Surroundings } from '../surroundings.ts';
import { dayOption, openRoutes } from './asked-routes.ts';
import { DRAWS_LEAST, DRAWS_MOST, SEED_MOST } from './forecast.ts';
import { whichSize } from './which-size.ts';

/** Options as they are typed; all texts. */
export interface RoutesFlags {
  readonly json?: boolean;
  readonly today?: string;
  readonly size?: string;
  readonly units: string;
  readonly words: string;
  readonly seed: string;
  readonly draws: string;
}

interface Chosen {
  readonly today: string;
  readonly units: Units;
  readonly words: Words;
  readonly seed: number;
  readonly draws: number;
}

const readFlags = (flags: RoutesFlags, today: string): Result<Chosen> => {
  const day = dayOption(flags.today ?? today);
  const units = oneOf('--units', flags.units, ['cm', 'in'] as const);
  const words = oneOf('--words', flags.words, ['us', 'uk'] as const);
  const seed = wholeNumber('--seed', flags.seed, 0, SEED_MOST);
  const draws = wholeNumber('--draws', flags.draws, DRAWS_LEAST, DRAWS_MOST);
  if (day.ok && units.ok && words.ok && seed.ok && draws.ok)
    return ok({
      today: day.value,
      units: units.value,
      words: words.value,
      seed: seed.value,
      draws: draws.value,
    });
  return fail(...faultsIn(day, units, words, seed, draws));
};

/** `dryflat routes FILE`: what to do now, in hours, yarn and chance, as a list or as JSON. */
export const routesCommand = async (
  path: string,
  flags: RoutesFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  const chosen = readFlags(flags, surroundings.today());
  if (!chosen.ok) return refused('dryflat routes', chosen.faults);
  const { today, units, words, seed, draws } = chosen.value;
  const asking = { today, said: flags.today !== undefined, size: flags.size };
  const opened = await openRoutes(path, asking, surroundings);
  if (!opened.ok) return refused(called(path), opened.faults, units);
  const telling = { units, words, style: styleFor(surroundings.colours) };
  const which = whichSize(opened.value.record, opened.value.notices, {
    ...telling,
    json: flags.json,
    seed,
    draws,
  });
  if (which) return which.ok ? done(which.value) : refused(called(path), which.faults, units);
  const { record, question, notices } = opened.value.asked[0]!;
  const found = routes(question, { seed, draws });
  if (!found.ok) return refused(called(path), found.faults, units);
  const sizes = sizeByNeedle(question, { seed, draws });
  if (!sizes.ok) return refused(called(path), sizes.faults, units);
  const told = { record, question, result: found.value, sizes: sizes.value, notices };
  if (flags.json) return done(routesJson(told, units));
  return done(routesReport(told, telling));
};
