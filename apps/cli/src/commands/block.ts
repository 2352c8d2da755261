import { type BlockQuestion, planBlock, SAFE_BECAUSE } from '@dryflat/engine/blocking';
import { fail, ok, type Result } from '@dryflat/engine/units';
import { askBlockingWith } from '@dryflat/record/block';
import { refused, type Units } from '../faults.ts';
import { called, openRecord, save, written } from '../files.ts';
import { blockJson } from '../json/block-json.ts';
import { faultsIn, oneOf } from '../options.ts';
import { blockReport } from '../print/block/report.ts';
import { blockSvg } from '../print/block/svg.ts';
import { styleFor } from '../print/style.ts';
import type { Words } from '../print/words.ts';
import { done, type Ending, type Surroundings } from '../surroundings.ts';
import { doubtsOf, notWritten, sizedBy, whichSize } from './which-size.ts';

/** Options as they are typed. */
export interface BlockFlags {
  readonly json?: boolean;
  readonly svg?: string;
  readonly force?: boolean;
  readonly toMeasure?: boolean;
  readonly size?: string;
  readonly units: string;
  readonly words: string;
}

const readFlags = (flags: BlockFlags): Result<{ units: Units; words: Words }> => {
  const units = oneOf('--units', flags.units, ['cm', 'in'] as const);
  const words = oneOf('--words', flags.words, ['us', 'uk'] as const);
  if (units.ok && words.ok) return ok({ units: units.value, words: words.value });
  return fail(...faultsIn(units, words));
};

const howFar = ({ gentle, pieces }: BlockQuestion): string => {
  const safe = pieces[0]?.fabric.safe;
  return gentle && safe !== undefined
    ? `Pins are placed to stretch no measurement by more than ${Number((100 * safe.limit).toFixed(1))} %, ${SAFE_BECAUSE[safe.origin]}; --to-measure goes as far as the fabric does.`
    : 'Stretched to measure, as far as the fabric goes; without --to-measure nothing is stretched beyond what is called safe.';
};

/** `dryflat block FILE`: which pins where and in which order, as a list, as JSON, and as a picture. */
export const blockCommand = async (
  path: string,
  flags: BlockFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  const chosen = readFlags(flags);
  if (!chosen.ok) return refused('dryflat block', chosen.faults);
  const { units, words } = chosen.value;
  const opened = await openRecord(path, surroundings);
  if (!opened.ok) return refused(called(path), opened.faults, units);
  const sized = sizedBy(opened.value.record, flags.size);
  if (!sized.ok) return refused(called(path), sized.faults, units);
  const record = sized.value;
  const known = [...opened.value.notices, ...doubtsOf(record)];
  const telling = { units, words, style: styleFor(surroundings.colours) };
  const which = whichSize(record, known, { ...telling, json: flags.json });
  if (which)
    return which.ok
      ? done(which.value, notWritten(flags.svg))
      : refused(called(path), which.faults, units);
  const asked = askBlockingWith(record, !(flags.toMeasure ?? false));
  if (!asked.ok) return refused(called(path), asked.faults, units);
  const { question, assumed } = asked.value;
  const made = planBlock(question);
  if (!made.ok) return refused(called(path), made.faults, units);
  const notices = [howFar(question), ...assumed, ...known];
  const out = flags.json
    ? blockJson(record, made.value, question.gentle, notices, units)
    : blockReport(record, made.value, notices, telling);
  if (flags.svg === undefined) return done(out);
  const picture = blockSvg(record, made.value, { units, words });
  const unsaved = await save([[flags.svg, picture]], flags, surroundings);
  return unsaved ?? done(out, written([flags.svg]));
};
