import { Button } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import type { Mat } from './use-mat.ts';

/** What the knitter moved, with the ways to plan around it and to let go of it. */
export const MovedPins = ({ mat, moved }: { mat: Mat; moved: ReadonlySet<number> }) => {
  const { record, readOnly } = useGarment();
  const { name, pins } = mat.planned!.plan;
  const around = (record.plan.pins ?? []).filter((pin) => pin.around && pin.piece === name).length;
  const toPlan = [...moved].filter((k) => pins[k]?.along === null).length + mat.lost;
  if (moved.size + mat.lost + around === 0) return null;
  return (
    <div className="df-row">
      {moved.size > 0 && <span>You moved {pinWords(moved.size)}.</span>}
      {mat.lost > 0 && <span>This plan has no place for {pinWords(mat.lost)} that you moved.</span>}
      {around > 0 && <span>The plan goes around {pinWords(around)} that you moved.</span>}
      {readOnly && moved.size > 0 && (
        <span>This record is only shown here: the move is not kept.</span>
      )}
      {toPlan > 0 && !readOnly && (
        <Button onPress={mat.planAround}>Plan around {toPlan === 1 ? 'it' : 'them'}</Button>
      )}
      <Button look="quiet" icon="undo" onPress={mat.putBack}>
        Pins as planned
      </Button>
    </div>
  );
};

const pinWords = (count: number): string => (count === 1 ? 'one pin' : `${count} pins`);
