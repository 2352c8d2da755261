import { type Keeping, useKeeping } from '../store/index.ts';

const SAYS: Readonly<Record<Keeping, string>> = {
  kept: 'Kept on this device',
  'kept-until-space-runs-short': 'Kept on this device while it has space',
  full: 'No space left on this device: save a file of each garment, and free some space',
  'not-kept': 'This browser keeps nothing: save a file before you close the tab',
};

/** Where the garments are, and how safe they are there. */
export const KeepingLine = () => {
  const keeping = useKeeping();
  const bad = keeping === 'full' || keeping === 'not-kept';
  return (
    <p className="df-keeping" role={bad ? 'alert' : undefined} data-bad={bad || undefined}>
      {SAYS[keeping]}
    </p>
  );
};
