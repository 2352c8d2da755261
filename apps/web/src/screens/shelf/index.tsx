import { lazy, Suspense, useState } from 'react';
import { Button, Disclosure, Icon } from '../../kit/index.ts';
import { SETTINGS } from '../../shell/hash.ts';
import { KeepingLine } from '../../shell/keeping-line.tsx';
import { SkipLink } from '../../shell/skip-link.tsx';
import { UnitSwitch } from '../../shell/unit-switch.tsx';
import { useArrival } from '../../shell/use-arrival.ts';
import { useAside, useShelfEntries } from '../../store/index.ts';
import { type Door, Doors } from './doors.tsx';
import { ExampleStories } from './example-stories.tsx';
import { GarmentRow } from './garment-row.tsx';
import { TapePicture } from './tape-picture.tsx';
import { TrashBox } from './trash-box.tsx';
import { useDroppedFiles } from './use-dropped-files.ts';
import './shelf.css';

const AsideNotice = lazy(() => import('../../shell/aside-notice.tsx'));

/** Every garment of this device, and the ways to put one there. */
const Shelf = () => {
  const entries = useShelfEntries();
  const aside = useAside(null);
  const [door, setDoor] = useState<Door | null>(null);
  const heading = useArrival<HTMLHeadingElement>('Shelf', 'shelf');
  const dropping = useDroppedFiles((text) => setDoor({ kind: 'bring-in', text }));
  const here = entries.filter((each) => each.trashed === undefined);
  const trashed = entries.filter((each) => each.trashed !== undefined);
  const isNew = here.length === 0;
  return (
    <div className="df-shelf" data-dropping={dropping || undefined}>
      <SkipLink />
      <header className="df-head">
        <p className="df-wordmark">Dryflat</p>
        <div className="df-head-tools">
          <UnitSwitch />
          <a className="df-button" data-look="quiet" href={SETTINGS}>
            Settings
          </a>
        </div>
      </header>
      <main className="df-page" id="main" tabIndex={-1}>
        <div className="df-opening">
          {isNew && <TapePicture />}
          <div className="df-title">
            <h1 ref={heading} tabIndex={-1}>
              {isNew ? 'What will it measure when it is dry?' : 'On your shelf'}
            </h1>
            {isNew ? (
              <p>
                Tell Dryflat about one garment, with whatever you have: a swatch, half a back, a
                sweater on the bed. It works out the size after the wash, and how sure that is.
              </p>
            ) : (
              <KeepingLine />
            )}
          </div>
        </div>
        {aside > 0 && (
          <Suspense>
            <AsideNotice garment={null} />
          </Suspense>
        )}
        <div className="df-row">
          <Button look="main" icon="add" onPress={() => setDoor({ kind: 'begin' })}>
            Begin a garment
          </Button>
          <Button icon="send" onPress={() => setDoor({ kind: 'bring-in', text: null })}>
            Bring one in from a file
          </Button>
        </div>
        {here.length > 0 && (
          <ul className="df-garments">
            {here.map((entry) => (
              <GarmentRow key={entry.id} entry={entry} onOpenDoor={setDoor} />
            ))}
          </ul>
        )}
        {isNew ? (
          <section className="df-stack" aria-labelledby="stories">
            <h2 id="stories">Or look over a shoulder first</h2>
            <ExampleStories />
          </section>
        ) : (
          <Disclosure level={2} title="Look over a shoulder: garments of an invented valley">
            <ExampleStories />
          </Disclosure>
        )}
        {trashed.length > 0 && <TrashBox entries={trashed} />}
      </main>
      {dropping && (
        <p className="df-drop" aria-hidden="true">
          <Icon name="fetch" /> Let go to bring it in
        </p>
      )}
      <Doors door={door} onClose={() => setDoor(null)} />
    </div>
  );
};
export default Shelf;
