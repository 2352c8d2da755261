import { lazy, Suspense } from 'react';
import { Announcer, Toasts } from './kit/index.ts';
import { ReminderKeeper } from './reminders/index.ts';
import Shelf from './screens/shelf/index.tsx';
import { Broken } from './shell/broken.tsx';
import { GarmentFrame } from './shell/garment-frame.tsx';
import { Loading } from './shell/loading.tsx';
import { LongWorkLine } from './shell/long-work-line.tsx';
import { useRoute } from './shell/route.ts';
import { ThemeKeeper } from './shell/theme-keeper.tsx';
import { UpdateOffer } from './shell/update-offer.tsx';
import { useOpening } from './store/index.ts';
import './shell/shell.css';

const OpenExample = lazy(() => import('./screens/shelf/open-example.tsx'));
const Settings = lazy(() => import('./screens/settings/index.tsx'));
const Unopened = lazy(() => import('./shell/unopened.tsx'));

const Place = () => {
  const route = useRoute();
  const opening = useOpening(null);
  if (route.at === 'garment')
    return <GarmentFrame key={route.id} id={route.id} place={route.place} />;
  if (route.at === 'example') return <OpenExample key={route.slug} slug={route.slug} />;
  if (route.at === 'settings') return <Settings />;
  return opening === 'open' ? <Shelf /> : <Unopened what="shelf" />;
};

export const App = () => (
  <Broken page>
    <Suspense fallback={<Loading />}>
      <ThemeKeeper />
      <ReminderKeeper />
      <UpdateOffer />
      <div className="df-room">
        <Place />
      </div>
    </Suspense>
    <LongWorkLine />
    <Toasts />
    <Announcer />
  </Broken>
);
