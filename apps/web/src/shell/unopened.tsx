import { useEffect, useState } from 'react';
import { Button, Card, Icon } from '../kit/index.ts';
import { readableGarments } from '../store/index.ts';
import { SETTINGS, SHELF } from './hash.ts';
import { saveGarment } from './save-garment.ts';
import { useArrival } from './use-arrival.ts';

type Readable = Awaited<ReturnType<typeof readableGarments>>[number];

/** Shown where storage does not answer: a way to try again, and files of what can be read all the same. */
const Unopened = ({ what }: { what: 'shelf' | 'garment' }) => {
  const title = what === 'shelf' ? 'Your shelf does not open' : 'This garment does not open';
  const heading = useArrival<HTMLHeadingElement>(title, what);
  const back = what === 'shelf' ? SETTINGS : SHELF;
  return (
    <>
      <header className="df-head">
        <a className="df-button" data-look="quiet" href={back}>
          {what === 'garment' && <Icon name="back" />}
          {what === 'shelf' ? 'Settings' : 'Shelf'}
        </a>
      </header>
      <main className="df-page" id="main" tabIndex={-1}>
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
        <p role="alert">
          This browser does not hand out what it keeps. Dryflat has deleted nothing of it. Close
          other tabs of Dryflat, make sure that the disk is not full, and try again.
        </p>
        <div>
          <Button look="main" onPress={() => location.reload()}>
            Try again
          </Button>
        </div>
        <Card title="What can be read all the same">
          <Readables />
        </Card>
      </main>
    </>
  );
};
export default Unopened;

const Readables = () => {
  const [found, setFound] = useState<readonly Readable[] | null>(null);
  useEffect(() => {
    let here = true;
    void readableGarments().then((all) => here && setFound(all));
    return () => {
      here = false;
    };
  }, []);
  if (found === null) return <p role="status">Looking…</p>;
  if (found.length === 0) return <p>Nothing at the moment.</p>;
  return (
    <ul className="df-readables">
      {found.map(({ id, name }) => (
        <li key={id}>
          <span>{name || 'No name yet'}</span>
          <Button icon="fetch" onPress={() => void saveGarment(id)}>
            <span>
              Save <span className="df-unseen">{name} </span>as a file
            </span>
          </Button>
        </li>
      ))}
    </ul>
  );
};
