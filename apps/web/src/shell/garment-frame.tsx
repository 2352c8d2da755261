import { lazy, Suspense } from 'react';
import { EmptyState, kindName, Notice } from '../kit/index.ts';
import { GarmentProvider, useAside, useGarment, useView } from '../store/index.ts';
import { ForecastProvider } from '../worker/index.ts';
import { Broken } from './broken.tsx';
import { GarmentHead } from './garment-head.tsx';
import { HalfTypedLine } from './half-typed-line.tsx';
import { SHELF } from './hash.ts';
import { Hem } from './hem.tsx';
import { KeepingLine } from './keeping-line.tsx';
import { LeftOutLine } from './left-out-line.tsx';
import { Loading } from './loading.tsx';
import { PinningLine } from './pinning-line.tsx';
import type { PlaceName } from './place-names.ts';
import { PLACES } from './places.ts';
import { SkipLink } from './skip-link.tsx';
import { useArrival } from './use-arrival.ts';
import { useUndoKeys } from './use-undo-keys.ts';

const AsideNotice = lazy(() => import('./aside-notice.tsx'));
const Unopened = lazy(() => import('./unopened.tsx'));

/** One garment: its bar, its name, the place that is open, and the hem; pins go in with the whole screen. */
export const GarmentFrame = ({ id, place }: { id: string; place: PlaceName }) => (
  <Broken garment={id} page>
    <GarmentProvider id={id} missing={<Missing id={id} />} unopened={<Unopened what="garment" />}>
      {place === 'pinning' ? (
        <WholeScreen id={id} />
      ) : (
        <ForecastProvider>
          <div className="df-frame">
            <SkipLink />
            <GarmentHead />
            <Content id={id} place={place} />
            <Hem id={id} place={place} />
          </div>
        </ForecastProvider>
      )}
    </GarmentProvider>
  </Broken>
);

/** A place that has the screen to itself: no bar, no hem, no forecast that is worked out beside it. */
const WholeScreen = ({ id }: { id: string }) => {
  const { record } = useGarment();
  const { label, Screen } = PLACES.pinning;
  const heading = useArrival<HTMLHeadingElement>(`${label}: ${record.name}`, 'pinning');
  useUndoKeys();
  return (
    <main className="df-whole" id="main" tabIndex={-1}>
      <h1 className="df-unseen" ref={heading} tabIndex={-1}>
        {label}: {record.name || 'No name yet'}
      </h1>
      <Broken garment={id}>
        <Suspense fallback={<Loading />}>
          <Screen />
        </Suspense>
      </Broken>
    </main>
  );
};

const Content = ({ id, place }: { id: string; place: PlaceName }) => {
  const aside = useAside(id);
  const { record, readOnly } = useGarment();
  const { words } = useView();
  const { label, Screen } = PLACES[place];
  const heading = useArrival<HTMLHeadingElement>(`${label}: ${record.name}`, place);
  return (
    <main className="df-page" id="main" tabIndex={-1}>
      <div className="df-title">
        <h1 ref={heading} tabIndex={-1}>
          {record.name || 'No name yet'}
          <span className="df-unseen">: {label}</span>
        </h1>
        <p className="df-soft">{kindName(record.kind, words)}</p>
        <KeepingLine />
        <HalfTypedLine />
        <LeftOutLine place={place} />
        <PinningLine />
      </div>
      {readOnly && (
        <Notice tone="unsure">
          This garment was saved by a newer Dryflat. It is shown as far as this version understands
          it and cannot be changed here.
        </Notice>
      )}
      {aside > 0 && (
        <Suspense>
          <AsideNotice garment={id} />
        </Suspense>
      )}
      <Broken key={place} garment={id}>
        <Suspense fallback={<Loading />}>
          <Screen />
        </Suspense>
      </Broken>
    </main>
  );
};

const Missing = ({ id }: { id: string }) => {
  const isUnread = useAside(id) > 0;
  return (
    <main className="df-page" id="main">
      <EmptyState
        level={1}
        title={isUnread ? 'This garment cannot be read' : 'There is no such garment on this device'}
        action={
          <a className="df-button" data-look="main" href={SHELF}>
            Go to the shelf
          </a>
        }
      >
        {isUnread
          ? 'What this device keeps of it is damaged.'
          : 'It may be on another device, or it was deleted for good.'}
      </EmptyState>
      {isUnread && (
        <Suspense>
          <AsideNotice garment={id} />
        </Suspense>
      )}
    </main>
  );
};
