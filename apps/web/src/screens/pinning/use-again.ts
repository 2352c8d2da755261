import type { InMat } from '@dryflat/engine/blocking';
import type { Fault } from '@dryflat/engine/units';
import type { MatWork } from '@dryflat/record';
import { useCallback, useEffect, useRef, useState } from 'react';
import { useGarment } from '../../store/index.ts';
import { type Again, makeMatWorker, type Planner, planner } from '../../worker/mat/index.ts';
import { againQuestion } from './mat-question.ts';
import { takeOver } from './take-over.ts';
import type { WorkAtHand } from './use-work.ts';

export type AgainState =
  | { readonly at: 'idle' }
  | { readonly at: 'working'; readonly done: number }
  | { readonly at: 'ready'; readonly again: Again; readonly inMat: readonly InMat[] }
  | { readonly at: 'faults'; readonly faults: readonly Fault[] }
  | { readonly at: 'broken'; readonly message: string };

export interface PlanAgain {
  readonly state: AgainState;
  /** Plans the rest from where things stand. */
  readonly ask: () => void;
  /** Ends it, or puts the answer away: the steps stay as they are. */
  readonly keepOld: () => void;
  readonly take: () => void;
}

const IDLE: AgainState = { at: 'idle' };

/** Works out the rest of the plan in a worker; nothing is taken over until the knitter says so. */
export const useAgain = (work: MatWork, act: WorkAtHand['act']): PlanAgain => {
  const { record } = useGarment();
  const [state, setState] = useState<AgainState>(IDLE);
  const [asked, setAsked] = useState(0);
  const plans = useRef<Planner | null>(null);
  const inMat = useRef<readonly InMat[]>([]);
  const now = useRef({ work, record });
  now.current = { work, record };
  useEffect(() => {
    plans.current = planner(makeMatWorker, (told) => {
      if (told.kind === 'progress') setState({ at: 'working', done: told.done });
      if (told.kind === 'again') setState({ at: 'ready', again: told.again, inMat: inMat.current });
      if (told.kind === 'faults') setState({ at: 'faults', faults: told.faults });
      if (told.kind === 'broken') setState({ at: 'broken', message: told.message });
    });
    return () => plans.current?.stop();
  }, []);
  // Asked once what was just told has come into the record.
  useEffect(() => {
    if (asked === 0) return;
    const question = againQuestion(now.current.work, now.current.record);
    if (!question.ok) {
      setState({ at: 'faults', faults: question.faults });
      return;
    }
    inMat.current = question.value.inMat;
    setState({ at: 'working', done: 0 });
    plans.current?.again(question.value);
  }, [asked]);
  const keepOld = useCallback((): void => {
    plans.current?.stop();
    setState(IDLE);
  }, []);
  return {
    state,
    ask: () => setAsked((count) => count + 1),
    keepOld,
    take: () => {
      if (state.at !== 'ready') return;
      const { plan } = state.again.replanned;
      act((mine) => takeOver(mine, plan, state.inMat));
      setState(IDLE);
    },
  };
};
