import { Button, toast } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { momentWords } from './clock-words.ts';
import type { DryingProps } from './edit-drying.ts';

/** Turning is noted; what is pinned is not turned. */
export const TurnRow = ({ drying, edit, now }: DryingProps & { now: number }) => {
  const { readOnly, undo } = useGarment();
  if (drying.pinned) return null;
  const last = drying.turned.at(-1);
  const turn = (): void => {
    edit((draft) => {
      draft.turned.push(new Date().toISOString());
    });
    toast('Noted that it was turned.', undo);
  };
  return (
    <div className="df-row">
      <Button onPress={turn} isDisabled={readOnly}>
        I turned it
      </Button>
      {last && <span className="df-soft">Turned {momentWords(Date.parse(last), now)}</span>}
    </div>
  );
};
