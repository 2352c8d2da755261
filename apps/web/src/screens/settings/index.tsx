import { lazy, Suspense, useState } from 'react';
import { Button, Card, Icon, toast } from '../../kit/index.ts';
import { SHELF } from '../../shell/hash.ts';
import { KeepingLine } from '../../shell/keeping-line.tsx';
import { SkipLink } from '../../shell/skip-link.tsx';
import { useArrival } from '../../shell/use-arrival.ts';
import { ViewChoices } from '../../shell/view-choices.tsx';
import { eraseDevice } from '../../store/index.ts';

const ConfirmErase = lazy(() => import('./confirm-erase.tsx'));
const Licences = lazy(() => import('./licences.tsx'));
const Sources = lazy(() => import('./sources.tsx'));

/** How everything is shown, and what this device keeps. */
const Settings = () => {
  const heading = useArrival<HTMLHeadingElement>('Settings', 'settings');
  const [asking, setAsking] = useState(false);
  const erase = async (): Promise<void> => {
    try {
      await eraseDevice();
      location.assign('/');
    } catch {
      toast('Not all of it could be deleted. Close other tabs of Dryflat, and try again.');
    }
  };
  return (
    <>
      <SkipLink />
      <header className="df-head">
        <a className="df-button" data-look="quiet" href={SHELF}>
          <Icon name="back" />
          Shelf
        </a>
      </header>
      <main className="df-page" id="main" tabIndex={-1}>
        <h1 ref={heading} tabIndex={-1}>
          Settings
        </h1>
        <Card>
          <ViewChoices />
        </Card>
        <Card title="What this device keeps">
          <KeepingLine />
          <p>
            Garments stay in this browser and go nowhere else. Save a file of a garment to keep it
            elsewhere, or to take it to another device.
          </p>
          <div>
            <Button icon="bin" onPress={() => setAsking(true)}>
              Delete everything here
            </Button>
          </div>
        </Card>
        <Card title="Where the numbers come from">
          <Suspense>
            <Sources />
          </Suspense>
        </Card>
        <Card title="What it is made of">
          <p>Dryflat is free to use, to pass on and to change. So is everything inside.</p>
          <Suspense>
            <Licences />
          </Suspense>
        </Card>
        {asking && (
          <Suspense>
            <ConfirmErase onConfirm={() => void erase()} onClose={() => setAsking(false)} />
          </Suspense>
        )}
      </main>
    </>
  );
};
export default Settings;
