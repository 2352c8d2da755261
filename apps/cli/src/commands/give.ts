import { refused } from '../faults.ts';
import { called, save } from '../files.ts';
import { done, type Ending, type Surroundings } from '../surroundings.ts';

export interface OutputFlags {
  readonly output?: string;
  readonly force?: boolean;
}

/** Prints a text, or writes it to the file that `-o` names and says so on standard error. */
export const give = async (
  text: string,
  { output, force = false }: OutputFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  if (output === undefined || output === '-') return done(text);
  const saved = await save(output, text, force, surroundings);
  if (!saved.ok) return refused(called(output), saved.faults);
  return done('', `Written to ${output}.\n`);
};
