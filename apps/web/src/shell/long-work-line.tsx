import { useSyncExternalStore } from 'react';
import { Button } from '../kit/index.ts';
import { isLongWork, onLongWork, stopLongWork } from '../worker/long-work.ts';

/** Offers to stop what has been worked out for long; lies over the page, so that nothing moves. */
export const LongWorkLine = () => {
  const long = useSyncExternalStore(onLongWork, isLongWork);
  return (
    <div className="df-long-work">
      <span role="status">{long && 'Still working it out…'}</span>
      {long && <Button onPress={stopLongWork}>Stop</Button>}
    </div>
  );
};
