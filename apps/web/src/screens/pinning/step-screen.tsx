import { useCallback, useEffect, useRef, useState } from 'react';
import { Button } from '../../kit/index.ts';
import { ChangesSheet } from './changes-sheet.tsx';
import type { Hands } from './hands.ts';
import type { Spoken } from './heard.ts';
import { MoreSheet } from './more-sheet.tsx';
import { goBack, goOn } from './progress.ts';
import { RunOutSheet } from './run-out-sheet.tsx';
import { StepDrawing } from './step-drawing.tsx';
import { useStepKeys } from './step-keys.ts';
import { StepNumbers } from './step-numbers.tsx';
import { TellSheet } from './tell-sheet.tsx';
import { useAgain } from './use-again.ts';
import type { Awake } from './use-awake.ts';
import { useListening } from './use-listening.ts';
import type { WorkAtHand } from './use-work.ts';

/** A knuckle that bounces presses once: presses closer than this are one, ms. Chosen by feel, no source. */
const BOUNCE = 120;

export interface StepScreenProps extends WorkAtHand {
  readonly hands: Hands;
  readonly setHands: (part: Partial<Hands>) => void;
  readonly sayAgain: () => void;
  readonly awake: Awake;
  readonly sheetOpen: boolean;
}

type Sheet = 'tell' | 'more' | 'run-out' | null;

/** One step with the whole screen: where, what, how far, and on. */
export const StepScreen = (props: StepScreenProps) => {
  const { work, act, readOnly, hands, sayAgain, awake, sheetOpen } = props;
  const [sheet, setSheet] = useState<Sheet>(null);
  const again = useAgain(work, act);
  const step = work.steps[work.at]!;
  const pressed = useRef(0);
  const go = useCallback(
    (way: 1 | -1): void => {
      const now = performance.now();
      if (now - pressed.current < BOUNCE) return;
      pressed.current = now;
      act(way === 1 ? goOn : goBack);
    },
    [act],
  );
  const heard = (word: Spoken): void => {
    if (word === 'again') sayAgain();
    else go(word === 'next' ? 1 : -1);
  };
  const busy = sheet !== null || sheetOpen || again.state.at !== 'idle';
  useStepKeys(hands.keys && !busy, go);
  const deaf = useListening(hands.listening && !busy, heard);
  const close = () => setSheet(null);
  useFromTheTop(work.at);
  return (
    <div className="df-pinning-step">
      <progress
        className="df-pinning-progress"
        max={work.steps.length}
        value={work.at}
        aria-label="Steps that are behind you"
      />
      <StepDrawing work={work} />
      <StepNumbers work={work} awake={awake} listening={hands.listening} deaf={deaf} />
      <div className="df-pinning-more">
        <Button isDisabled={readOnly} onPress={() => setSheet('tell')}>
          Tell what the tape says
        </Button>
        <Button look="quiet" isDisabled={readOnly} onPress={() => setSheet('more')}>
          More
        </Button>
      </div>
      <div className="df-pinning-ways">
        <button type="button" disabled={work.at === 0} onClick={() => go(-1)}>
          Back
        </button>
        <button type="button" data-main onClick={() => go(1)}>
          <span>
            Next<span className="df-unseen">, </span>
          </span>
          <small>{NEXT_WORDS[step.done ?? 'open']}</small>
        </button>
      </div>
      {sheet === 'tell' && (
        <TellSheet
          work={work}
          act={act}
          onClose={close}
          again={() => {
            close();
            again.ask();
          }}
        />
      )}
      {sheet === 'more' && (
        <MoreSheet work={work} act={act} onClose={close} runOut={() => setSheet('run-out')} />
      )}
      {sheet === 'run-out' && (
        <RunOutSheet
          work={work}
          act={act}
          onClose={close}
          again={() => {
            close();
            again.ask();
          }}
        />
      )}
      <ChangesSheet again={again} work={work} />
    </div>
  );
};

const NEXT_WORDS = { open: 'this one is in', in: 'it is in', passed: 'it is left out' } as const;

/** Each step is read from its top. */
const useFromTheTop = (at: number): void => {
  // biome-ignore lint/correctness/useExhaustiveDependencies: another step is what scrolls back
  useEffect(() => {
    scrollTo(0, 0);
  }, [at]);
};
