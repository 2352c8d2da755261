import { type Fault, fail, ok, type Result } from '@dryflat/engine/units';
import { migrateUp, OLDEST_VERSION } from '../migrations/index.ts';
import { isPlain, type PlainRecord } from '../migrations/step.ts';
import { withCleanPhotos } from '../photo/clean-photos.ts';
import type { GarmentRecord } from '../schema/garment.ts';
import { CURRENT_VERSION, FORMAT } from '../schema/version.ts';
import { parseJson } from './parse-json.ts';
import { givenText } from './path.ts';
import { stripUnknown } from './strip-unknown.ts';
import { parseStructure } from './structure.ts';

export interface ReadRecord {
  readonly record: GarmentRecord;
  /** True for a version newer than this program: shown, never saved over. */
  readonly readOnly: boolean;
  /** The older version that the file was in, or null. */
  readonly migratedFrom: number | null;
  /** What the reader should know, one sentence each. */
  readonly notices: readonly string[];
  /** The text as it was given, byte for byte: nothing in a file that is opened is ever lost. */
  readonly original: string;
}

/**
 * Reads a garment record. Every structural fault is reported, not just the first; faults of meaning
 * (`faultsOf`) do not stop a record from opening. Pictures hold nothing beside what they show.
 */
export const readRecord = (text: string): Result<ReadRecord> => {
  const parsed = parseJson(text.replace(/^\uFEFF/, ''));
  if (!parsed.ok) return parsed;
  const plain = parsed.value;
  const faults = headerFaults(plain);
  if (faults.length > 0 || !isPlain(plain)) return fail(...faults);
  return plain.version === CURRENT_VERSION
    ? opened(parseStructure(plain), text)
    : Number(plain.version) < CURRENT_VERSION
      ? readOlder(plain, text)
      : readNewer(plain, text);
};

const opened = (
  structure: Result<GarmentRecord>,
  original: string,
  extra: Partial<ReadRecord> = {},
): Result<ReadRecord> => {
  if (!structure.ok) return structure;
  const { record, cleaned } = withCleanPhotos(structure.value);
  return ok({
    record,
    readOnly: false,
    migratedFrom: null,
    original,
    ...extra,
    notices: [...(extra.notices ?? []), ...cleanedNotice(cleaned)],
  });
};

const cleanedNotice = (cleaned: number): string[] =>
  cleaned === 0
    ? []
    : [
        `Taken out of ${cleaned === 1 ? 'a picture' : `${cleaned} pictures`}: what a camera or a program wrote beside it, such as place and time.`,
      ];

const readOlder = (plain: PlainRecord, text: string): Result<ReadRecord> => {
  const version = Number(plain.version);
  return opened(parseStructure(migrateUp(plain, version)), text, {
    migratedFrom: version,
    notices: [
      `This file was in version ${version}; it is saved in version ${CURRENT_VERSION} from now on.`,
    ],
  });
};

const readNewer = (newer: PlainRecord, text: string): Result<ReadRecord> => {
  const { plain, stripped } = stripUnknown({ ...newer, version: CURRENT_VERSION });
  const structure = parseStructure(plain);
  if (!structure.ok) return fail(tooNew(newer.version), ...structure.faults);
  const left = stripped.length === 0 ? '' : ` Not shown: ${stripped.join(', ')}.`;
  return opened(structure, text, {
    readOnly: true,
    notices: [
      `This file is in version ${newer.version}, newer than this program (${CURRENT_VERSION}): it can be looked at, not changed.${left}`,
    ],
  });
};

const tooNew = (version: unknown): Fault => ({
  code: 'too-new',
  field: 'version',
  given: givenText(version),
  problem: `this program understands versions ${OLDEST_VERSION} to ${CURRENT_VERSION}, and what it knows of the file does not hold together`,
  mend: 'Open it with a newer program; the file is left as it is.',
});

const headerFaults = (plain: unknown): Fault[] => {
  if (!isPlain(plain))
    return [
      {
        code: 'not-a-record',
        field: 'file',
        given: givenText(plain),
        problem: 'a garment record is a group of fields in { }',
        mend: 'Choose a file that was exported as a garment record.',
      },
    ];
  return plain.format === FORMAT ? versionFaults(plain.version) : [wrongFormat(plain.format)];
};

const wrongFormat = (format: unknown): Fault => ({
  code: 'wrong-format-name',
  field: 'format',
  given: givenText(format),
  problem: `a garment record says "format": "${FORMAT}"`,
  mend: 'Choose a file that was exported as a garment record.',
});

const versionFaults = (version: unknown): Fault[] =>
  Number.isInteger(version) && Number(version) >= OLDEST_VERSION
    ? []
    : [
        {
          code: 'wrong-version',
          field: 'version',
          given: givenText(version),
          problem: `the version is a whole number from ${OLDEST_VERSION}`,
          mend: `Write the version that the file was saved in; the current one is ${CURRENT_VERSION}.`,
        },
      ];
