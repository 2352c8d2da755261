import { save, written } from '../files.ts';
import { done, type Ending, type Surroundings } from '../surroundings.ts';

export interface OutputFlags {
  readonly output?: string;
  readonly force?: boolean;
}

/** Prints a text, or writes it to the file that `-o` names and says so on standard error. */
export const give = async (
  text: string,
  { output, ...flags }: OutputFlags,
  surroundings: Surroundings,
): Promise<Ending> => {
  if (output === undefined || output === '-') return done(text);
  return (await save([[output, text]], flags, surroundings)) ?? done('', written([output]));
};
