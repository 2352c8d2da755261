import { UNKNOWNS } from './imagined.ts';
import type { Learnt } from './learn.ts';
import type { DryingQuestion, Spread } from './types.ts';

interface Notice {
  readonly code: string;
  readonly text: string;
}

/** Prior SDs: one drying in twenty is farther off by luck alone. */
const SURPRISE = 2;
/** Fewer equal draws than this leave the ends of a range to a handful. */
const FEW = 200;
/** Hours after which what is wet is usually hurried (common practice, no source). */
const LONG = 72;
const DAMP = 85;

const surprise = ({ rows, weights }: Learnt): readonly Notice[] => {
  const at = UNKNOWNS.indexOf('heat');
  const mean = rows.reduce((sum, row, i) => sum + weights[i]! * row[at]!, 0);
  if (Math.abs(mean) < SURPRISE) return [];
  const way = mean < 0 ? 'slower' : 'faster';
  return [
    {
      code: 'surprise',
      text: `It dries much ${way} than this air and area tell. The weighings are believed; check the area, the layers and the humidity.`,
    },
  ];
};

const when = (is: boolean, code: string, text: string): readonly Notice[] =>
  is ? [{ code, text }] : [];

export const noticesOf = (
  question: DryingQuestion,
  learnt: Learnt,
  dryHours: Spread,
): readonly Notice[] => [
  ...when(
    typeof question.wet !== 'number',
    'no-scale',
    'Without the mass after pressing the water is a guess. Weighing it once narrows the time most.',
  ),
  ...when(
    question.lying.fabricM2 === null,
    'area-guessed',
    'The area is guessed from the mass. With the width and length as it lies the time is surer.',
  ),
  ...when(
    question.fibres.some(({ fibre }) => fibre === 'other'),
    'fibre-unknown',
    'What one of the fibres holds in air is not known; it is taken as anything between polyester and wool.',
  ),
  ...when(
    question.air.humidityPercent >= DAMP,
    'damp-air',
    'In air this damp it dries slowly, and what it holds when it has dried is much. A drier or warmer room, or moving air, helps most.',
  ),
  ...when(
    dryHours.p95 > LONG,
    'long',
    'It may take more than three days. What stays wet so long smells and grows mold: press more water out, or move the air.',
  ),
  ...when(
    dryHours.p95 === 0,
    'dry-already',
    'It is as light as it is dry in this room: there is nothing left to dry.',
  ),
  ...surprise(learnt),
  ...when(
    !learnt.fit.converged || learnt.effectiveDraws < FEW,
    'unsure-fit',
    'The weighings do not sit well together, so the range is rough. Weigh once more.',
  ),
];
