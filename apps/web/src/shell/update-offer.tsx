import { useState, useSyncExternalStore } from 'react';
import { Button } from '../kit/index.ts';
import { onUpdate, takeUpdate, updateWaits } from './updates.ts';

/** Offers a newer version of the app; nothing happens until it is taken. */
export const UpdateOffer = () => {
  const waits = useSyncExternalStore(onUpdate, updateWaits);
  const [later, setLater] = useState(false);
  if (!waits || later) return null;
  return (
    <aside className="df-offer" aria-label="Newer version">
      <p>A newer Dryflat is ready. What you typed is kept.</p>
      <Button look="main" onPress={takeUpdate}>
        Use it now
      </Button>
      <Button look="quiet" onPress={() => setLater(true)}>
        Later
      </Button>
    </aside>
  );
};
