import type { OutlinePiece } from '@dryflat/engine/garment';
import { ChoiceChips, useWords } from '../../kit/index.ts';
import type { TextAnswer } from '../../worker/counts/index.ts';
import { Outlines, type ShownOutline } from './outlines.tsx';
import { useAsideChoice } from './use-aside.ts';

const WAYS = ['mine', 'unchanged', 'theirs'] as const;

/** The outline that the text draws: recounted, or as printed at either gauge; over what is wanted. */
export const RecountDrawing = ({
  answer,
  wanted,
  name,
}: {
  answer: TextAnswer;
  wanted: OutlinePiece | null;
  name: string;
}) => {
  const word = useWords();
  const [chosen, choose] = useAsideChoice(`drawn/${answer.id}`, WAYS, 'mine');
  const labels = {
    mine: 'Recounted',
    unchanged: `As printed, at my ${word('gauge')}`,
    theirs: `As printed, at the pattern’s ${word('gauge')}`,
  };
  const choices = WAYS.filter((way) => answer[way] !== null);
  const way = choices.find((each) => each === chosen) ?? choices[0];
  if (way === undefined) return null;
  const shown: ShownOutline[] = [
    ...(wanted ? [{ as: 'wanted' as const, label: 'wanted', outline: wanted }] : []),
    { as: 'counts', label: labels[way].toLowerCase(), outline: answer[way]! },
  ];
  return (
    <div className="co-drawn">
      <ChoiceChips
        label={`What the text of the ${name.toLowerCase()} draws`}
        value={way}
        onChange={choose}
        choices={choices.map((value) => ({ value, label: labels[value] }))}
      />
      <Outlines title={`${name}: ${labels[way]}, over the outline wanted`} shown={shown} />
    </div>
  );
};
