import type { MatTold, MatWork } from '@dryflat/record';
import {
  Button,
  ChoiceChips,
  Dialog,
  Disclosure,
  LengthField,
  Notice,
  useLandmarkName,
  useLengths,
} from '../../kit/index.ts';
import { newId } from '../../store/index.ts';
import { toldAt } from './mat-question.ts';
import { setDone } from './progress.ts';
import { LETTERS } from './step-numbers.tsx';
import { referenceWords } from './step-words.ts';
import { useTyped } from './use-typed.tsx';
import type { WorkAtHand } from './use-work.ts';

/** A reading this far from the plan may be from something else, share of the planned distance and mm. Chosen, no source. */
const FAR = { share: 0.15, mm: 20 };

const FELT = [
  { value: 'right', label: 'As it should', note: 'It came with an even pull' },
  { value: 'at-limit', label: 'It will go no farther', note: 'I pulled, and this is the end' },
  { value: 'slack', label: 'It lies slack', note: 'It lies there without a pull' },
] as const;

/** What tape and hand say at the step that is shown; everything is kept as it is typed. */
export const TellSheet = ({
  work,
  act,
  onClose,
  again,
}: Pick<WorkAtHand, 'work' | 'act'> & { onClose: () => void; again: () => void }) => {
  const { at } = work;
  const step = work.steps[at]!;
  const told = toldAt(work, at);
  const { length } = useLengths();
  const name = useLandmarkName();
  const tell = (recipe: (mine: MatTold) => void): void =>
    act((mine, now) => recipe(toldAt(mine, at) ?? begin(mine, at, now)));
  const paths = `onMat/${work.id}/step-${at}/`;
  const typed = useTyped(paths, told === undefined);
  const far = step.from.filter(({ mm }, k) => isFar(mm, told?.tapeMm[k]));
  return (
    <Dialog
      title={`Step ${at + 1}: what the tape says`}
      onClose={onClose}
      foot={
        <>
          <Button onPress={onClose}>Only keep it</Button>
          <Button
            look="main"
            onPress={typed.unlessHalf(() => {
              act((mine) => {
                if (mine.steps[at]?.done === undefined) setDone(mine, at, 'in');
              });
              again();
            })}
          >
            Work the rest out from here
          </Button>
        </>
      }
    >
      <p className="df-pinning-sheet df-soft">
        Measure to the pin where it is now. It counts as in.
      </p>
      {step.from.map(({ name: from, mm }, k) => (
        <LengthField
          key={LETTERS[k]}
          label={`${LETTERS[k]}: from ${referenceWords(from)}`}
          hint={`Planned: ${length(mm)}`}
          path={`${paths}tape-${k}`}
          valueMm={told?.tapeMm[k] ?? null}
          onCommit={(value) =>
            tell((mine) => {
              mine.tapeMm[k] = value;
            })
          }
        />
      ))}
      {far.map(({ name: from, mm }) => (
        <Notice key={from} tone="unsure">
          Planned was {length(mm)} from {referenceWords(from)}: was it measured from there?
        </Notice>
      ))}
      <ChoiceChips
        label="How does the fabric come?"
        value={told?.felt ?? null}
        onChange={(felt) =>
          tell((mine) => {
            mine.felt = felt;
          })
        }
        choices={FELT}
      />
      {(work.lies?.reaches.length ?? 0) > 0 && (
        <Disclosure title="Measures of the piece, if you took any" startsOpen={hasMeasures(told)}>
          <div className="df-stack">
            {work.lies!.reaches.map(({ landmark, pinnedMm }) => (
              <LengthField
                key={landmark}
                label={name(landmark)}
                hint={`${length(pinnedMm)} when all is in`}
                path={paths + landmark}
                valueMm={told?.measured.find((each) => each.landmark === landmark)?.mm ?? null}
                onCommit={(value) => tell((mine) => measure(mine, landmark, value))}
              />
            ))}
          </div>
        </Disclosure>
      )}
      {typed.told}
    </Dialog>
  );
};

const begin = (work: MatWork, step: number, at: string): MatTold => {
  work.told.push({ id: newId(), step, at, tapeMm: [null, null], felt: 'right', measured: [] });
  return work.told.at(-1)!;
};

const measure = (told: MatTold, landmark: string, mm: number | null): void => {
  told.measured = told.measured.filter((each) => each.landmark !== landmark);
  if (mm !== null) told.measured.push({ landmark, mm });
};

const isFar = (planned: number, read: number | null | undefined): boolean =>
  read != null &&
  Math.abs(read - planned) > FAR.mm &&
  Math.abs(read - planned) > FAR.share * planned;

const hasMeasures = (told: MatTold | undefined): boolean => (told?.measured.length ?? 0) > 0;
