import { Button } from '../../kit/index.ts';
import { useForecast } from '../../worker/index.ts';
import { BrokenForecast, NotYet, Working } from '../forecast/not-yet.tsx';
import './counts.css';
import { useSizeAsked } from '../forecast/size-asked.tsx';
import { GaugeCard } from './gauge-card.tsx';
import { myPitch } from './my-pitch.ts';
import { OwnTextsCard } from './own-texts-card.tsx';
import { PieceCountsCard } from './piece-counts-card.tsx';
import { SumsCard } from './sums-card.tsx';
import { useAsideChoice } from './use-aside.ts';
import { useCounts } from './use-counts.ts';

/** The garment in stitches and rows at the knitter's own gauge, and the pattern's counts beside them. */
const Screen = () => {
  const { faults, broken } = useForecast();
  const { forecast, question } = useSizeAsked();
  const [state, setState] = useAsideChoice('state', ['dried', 'asKnit'], 'dried');
  const now = useCounts(forecast, state);
  const failed = broken ?? now.broken;
  if (failed !== null) return <BrokenForecast message={failed} />;
  if (forecast === null)
    return faults.length > 0 && question === null ? <NotYet faults={faults} /> : <Working />;
  const { gauge } = forecast;
  const pieces = now.pieces ?? [];
  return (
    <>
      {question}
      <GaugeCard gauge={gauge} state={state} onState={setState} />
      {now.pieces === null && <Working />}
      {pieces.length > 0 && (
        <div className="df-row co-not-printed">
          <Button onPress={() => print()}>Print these counts</Button>
        </div>
      )}
      <div className="co-pieces" aria-busy={now.pending}>
        {pieces.map((piece) => (
          <PieceCountsCard key={piece.outline.name} piece={piece} gauge={gauge} />
        ))}
      </div>
      <div className="df-stack co-not-printed">
        <OwnTextsCard outlines={pieces.map(({ outline }) => outline)} texts={now.texts} />
        <SumsCard pitch={myPitch(gauge, state)} />
      </div>
    </>
  );
};
export default Screen;
