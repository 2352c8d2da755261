import type { MatWork } from '@dryflat/record';
import { Button, Dialog, Disclosure, FaultList, Notice, useFaultText } from '../../kit/index.ts';
import type { Again } from '../../worker/mat/index.ts';
import { percent } from '../mat/mat-words.ts';
import { useNamedText } from '../mat/plan-notes.tsx';
import type { AgainState, PlanAgain } from './use-again.ts';

const TITLES: Readonly<Record<Exclude<AgainState['at'], 'idle'>, string>> = {
  working: 'Working the rest out again',
  ready: 'What would change',
  faults: 'It cannot be worked out like this',
  broken: 'It cannot be worked out',
};

/** What a new plan of the rest would change, before it is taken over. */
export const ChangesSheet = ({ again, work }: { again: PlanAgain; work: MatWork }) => {
  const { state, keepOld, take } = again;
  if (state.at === 'idle') return null;
  return (
    <Dialog
      title={TITLES[state.at]}
      onClose={keepOld}
      foot={
        state.at === 'working' ? (
          <Button onPress={keepOld}>Cancel</Button>
        ) : (
          <>
            <Button onPress={keepOld}>Keep the old steps</Button>
            {state.at === 'ready' && (
              <Button look="main" onPress={take}>
                Take the new plan
              </Button>
            )}
          </>
        )
      }
    >
      <Body state={state} work={work} />
    </Dialog>
  );
};

const Body = ({ state, work }: { state: AgainState; work: MatWork }) => {
  const print = useFaultText();
  if (state.at === 'working')
    return (
      <div className="df-planning">
        <progress max={1} value={state.done} aria-label="Share that is done" />
        <span>{percent(state.done)}. What is in the mat stays as it is.</span>
      </div>
    );
  if (state.at === 'faults')
    return (
      <FaultList
        faults={state.faults.map((each) => ({
          ...each,
          given: '',
          problem: print(each.problem),
          mend: print(each.mend),
        }))}
      />
    );
  if (state.at === 'broken')
    return <Notice tone="wrong">That is our mistake: {state.message}. Your steps are kept.</Notice>;
  return state.at === 'ready' && <Changes again={state.again} work={work} />;
};

const Changes = ({ again, work }: { again: Again; work: MatWork }) => {
  const told = useNamedText((work.lies?.reaches ?? []).map(({ landmark }) => landmark));
  const { learned, replanned } = again;
  const moved = learned.changes.filter(({ before, after }) => differs(before, after));
  const { couldNot, pins } = replanned.plan;
  return (
    <>
      <Sentences
        title="What the piece told"
        texts={moved.map(({ text }) => text)}
        told={told}
        none={
          learned.notices.some(({ code }) => code === 'not-taken')
            ? 'Nothing that could be taken; why is said below.'
            : 'Nothing new: the fabric does as it was thought to.'
        }
      />
      <Sentences
        title="What changes in the plan"
        texts={replanned.changes.map(({ text }) => text)}
        told={told}
        none="Nothing changes in the steps to come."
      />
      {[...learned.notices, ...replanned.notices].map(({ text }) => (
        <Notice key={text} tone="unsure">
          {told(text)}
        </Notice>
      ))}
      {couldNot.length > 0 && (
        <Disclosure title="What it will not do now">
          <ul className="df-plain-list">
            {couldNot.map(({ what, why }) => (
              <li key={what}>{told(`${what}: ${why}.`)}</li>
            ))}
          </ul>
        </Disclosure>
      )}
      <p className="df-soft df-pinning-sheet">
        {pins.length === 0
          ? 'Nothing more has to go in.'
          : `${pins.length} ${pins.length === 1 ? 'step' : 'steps'} to come; what is in the mat stays as it is.`}
      </p>
    </>
  );
};

/** Moved by more than a hundredth of what was not known before: less is rounding, and no news. */
const differs = (
  before: { readonly mean: number; readonly sd: number },
  after: { readonly mean: number },
): boolean => Math.abs(after.mean - before.mean) > 0.01 * before.sd;

const Sentences = ({
  title,
  texts,
  told,
  none,
}: {
  title: string;
  texts: readonly string[];
  told: (text: string) => string;
  none?: string;
}) => (
  <section className="df-stack">
    <h3>{title}</h3>
    {texts.length === 0 ? (
      <p>{none}</p>
    ) : (
      <ul className="df-plain-list">
        {texts.map((text) => (
          <li key={text}>{told(text)}</li>
        ))}
      </ul>
    )}
  </section>
);
