import { planBlock } from '@dryflat/engine/blocking';
import { findExample, type GarmentRecord } from '@dryflat/record';
import { askBlockingWith } from '@dryflat/record/block';
import { type PaperInput, paperInput } from '../input/paper-input.ts';
import type { PageOptions } from '../input/telling.ts';
import { testFaces } from './faces.ts';

export const A4: PageOptions = { paper: 'a4', units: 'cm', words: 'us', faces: testFaces };
export const LETTER: PageOptions = { paper: 'letter', units: 'in', words: 'uk', faces: testFaces };

/** A day that every test makes its pages on. */
export const ABOUT = {
  title: 'A test',
  made: new Date(Date.UTC(2031, 3, 9)),
  faces: testFaces,
};

export const exampleRecord = (slug: string): GarmentRecord => {
  const found = findExample(slug);
  if (found === undefined || found === null) throw new Error(`no example ${slug}`);
  return structuredClone(found.record);
};

/** Pages show a plan whatever its mesh; a coarse one takes a tenth of the time. */
const COARSE = { nodes: 150, mostEvaluations: 1500 };

const inputOf = (record: GarmentRecord, given: Parameters<typeof paperInput>[1]): PaperInput => {
  const made = paperInput(record, given);
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value;
};

/** An example without a plan of the mat. */
export const unplanned = (slug: string): PaperInput => inputOf(exampleRecord(slug), { plan: null });

const planned = new Map<string, PaperInput>();

/** An example with its plan, stretched gently; plans are the slow part, so each is made once. */
export const plannedExample = (slug: string): PaperInput => {
  const known = planned.get(slug);
  if (known !== undefined) return known;
  const record = exampleRecord(slug);
  const asked = askBlockingWith(record, true);
  if (!asked.ok) throw new Error(JSON.stringify(asked.faults));
  const made = planBlock(asked.value.question, COARSE);
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  const input = inputOf(record, { plan: made.value, notices: asked.value.assumed });
  planned.set(slug, input);
  return input;
};
