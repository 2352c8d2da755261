import { forecast } from '@dryflat/engine/garment';
import { fail, ok, type Result } from '@dryflat/engine/units';
import { askForecast } from '@dryflat/record';
import { refused, type Units } from '../faults.ts';
import { called, openRecord } from '../files.ts';
import { forecastJson } from '../json/forecast-json.ts';
import { faultsIn, oneOf, wholeNumber } from '../options.ts';
import { report } from '../print/report.ts';
import { styleFor } from '../print/style.ts';
import type { Words } from '../print/words.ts';
import { done, type Ending, type Surroundings } from '../surroundings.ts';
import { doubtsOf, sizedBy, whichSize } from './which-size.ts';

/** Options as they are typed; all texts. */
export interface ForecastFlags {
  readonly json?: boolean;
  readonly units: string;
  readonly words: string;
  readonly size?: string;
  readonly seed: string;
  readonly draws: string;
}

/** Seeds of the sampler are 32 bits; fewer than 1,000 draws leave the ends of a range to chance. */
export const SEED_MOST = 4_294_967_295;
export const DRAWS_LEAST = 1_000;
export const DRAWS_MOST = 1_000_000;

interface Chosen {
  readonly units: Units;
  readonly words: Words;
  readonly seed: number;
  readonly draws: number;
}

const readFlags = (flags: ForecastFlags): Result<Chosen> => {
  const units = oneOf('--units', flags.units, ['cm', 'in'] as const);
  const words = oneOf('--words', flags.words, ['us', 'uk'] as const);
  const seed = wholeNumber('--seed', flags.seed, 0, SEED_MOST);
  const draws = wholeNumber('--draws', flags.draws, DRAWS_LEAST, DRAWS_MOST);
  if (units.ok && words.ok && seed.ok && draws.ok)
    return ok({ units: units.value, words: words.value, seed: seed.value, draws: draws.value });
  return fail(...faultsIn(units, words, seed, draws));
};

/** `dryflat forecast FILE`: what the garment will measure in each state, as a table or as JSON. */
export const forecastCommand = async (
  path: string,
  flags: ForecastFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  const chosen = readFlags(flags);
  if (!chosen.ok) return refused('dryflat forecast', chosen.faults);
  const { units, words, seed, draws } = chosen.value;
  const opened = await openRecord(path, surroundings);
  if (!opened.ok) return refused(called(path), opened.faults, units);
  const sized = sizedBy(opened.value.record, flags.size);
  if (!sized.ok) return refused(called(path), sized.faults, units);
  const notices = [...opened.value.notices, ...doubtsOf(sized.value)];
  const told = { units, words, style: styleFor(surroundings.colours) };
  const each = whichSize(sized.value, notices, { ...told, json: flags.json, seed, draws });
  if (each?.ok) return done(each.value);
  const question = each ?? askForecast(sized.value);
  if (!question.ok) return refused(called(path), question.faults, units);
  const answer = forecast(question.value, { seed, draws });
  if (flags.json) return done(forecastJson(sized.value, answer, notices, units));
  return done(report(sized.value, answer, notices, told));
};
