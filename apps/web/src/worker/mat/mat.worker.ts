/// <reference lib="webworker" />
import { planBlock } from '@dryflat/engine/blocking';
import { askBlockingWith } from '@dryflat/record/block';
import { planAgain } from './again.ts';
import { HAND_NODES, type Hand, openHand } from './hand.ts';
import type { AgainAsk, MatAsk, MatTold, MoveAsk, OpenAsk, PlanAsk } from './protocol.ts';

/** One worker plans, another holds the piece under the hand: both run this. */
const say = (told: MatTold): void => postMessage(told);

/** Progress is told no more often than it can be seen, ms. */
const PROGRESS_EVERY = 50;

/** Tells the share that is done, now and then. */
const teller = (turn: number): ((done: number) => void) => {
  let told = 0;
  return (done) => {
    if (performance.now() - told <= PROGRESS_EVERY) return;
    told = performance.now();
    say({ kind: 'progress', turn, done });
  };
};

const again = ({ turn, question }: AgainAsk): MatTold => {
  const planned = planAgain(question, teller(turn));
  if (!planned.ok) return { kind: 'faults', turn, faults: planned.faults };
  return { kind: 'again', turn, again: planned.value };
};

const plan = ({ turn, record, choices }: PlanAsk): MatTold => {
  const { piece: chosen, gentle } = choices;
  const asked = askBlockingWith(record, gentle);
  if (!asked.ok) return { kind: 'faults', turn, faults: asked.faults };
  const { pieces, ...question } = asked.value.question;
  const piece = pieces.find(({ name }) => name === chosen) ?? pieces[0]!;
  const tell = teller(turn);
  const made = planBlock(
    { ...question, pieces: [piece] },
    {
      nodes: HAND_NODES,
      onStep: ({ done }) => {
        tell(done);
        return true;
      },
    },
  );
  if (!made.ok) return { kind: 'faults', turn, faults: made.faults };
  const names = pieces.map(({ name }) => name);
  return {
    kind: 'plan',
    turn,
    planned: {
      pieces: names,
      piece,
      plan: made.value.pieces[0]!,
      whole: made.value,
      mat: made.value.pieces[0]!.laidOn,
    },
  };
};

let hand: Hand | null = null;

const open = ({ turn, piece, plan }: OpenAsk): MatTold => {
  hand = null;
  const opened = openHand(piece, plan);
  if (!opened.ok) return { kind: 'faults', turn, faults: opened.faults };
  hand = opened.value;
  const lying = hand.lie(plan.pins.map(({ xMm, yMm }) => [xMm, yMm]));
  return { kind: 'open', turn, cloth: hand.cloth, lying };
};

/** A pull far beyond the fabric takes seconds to work out: it is told in parts, ms. */
const TOLD_WITHIN = 150;

const move = ({ turn, places }: MoveAsk): MatTold | null => {
  if (hand === null) return null;
  const began = performance.now();
  const lying = hand.lie(places, () => performance.now() - began < TOLD_WITHIN);
  return { kind: 'lying', turn, lying, ms: performance.now() - began };
};

const answer = (asked: MatAsk): MatTold | null => {
  try {
    if (asked.kind === 'plan') return plan(asked);
    if (asked.kind === 'again') return again(asked);
    return asked.kind === 'open' ? open(asked) : move(asked);
  } catch (error) {
    const message = error instanceof Error ? error.message : `${error}`;
    return { kind: 'broken', turn: asked.turn, message };
  }
};

addEventListener('message', ({ data }: MessageEvent<MatAsk>) => {
  const told = answer(data);
  if (told !== null) say(told);
});
