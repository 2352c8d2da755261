import { isAtRisk, type Keeping, useKeeping } from '../store/index.ts';

const SAYS: Readonly<Record<Keeping, string>> = {
  kept: 'Kept on this device',
  'kept-until-space-runs-short': 'Kept on this device while it has space',
  writing: 'Keeping…',
  gone: 'Deleted in another tab: what you type here is not kept',
  failing: 'Not kept yet: this device does not take it. Leave this page open, it is tried again',
  full: 'Not kept yet: no space left on this device. Free some and leave this page open, or save a file',
  'not-kept': 'This browser keeps nothing: save a file before you close the tab',
};

/** Where the garments are, and how safe they are there. */
export const KeepingLine = () => {
  const keeping = useKeeping();
  const bad = isAtRisk(keeping);
  return (
    <p className="df-keeping" role={bad ? 'alert' : undefined} data-bad={bad || undefined}>
      {SAYS[keeping]}
    </p>
  );
};
