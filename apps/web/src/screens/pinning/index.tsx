import { EmptyState } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useDeviceNote, useGarment } from '../../store/index.ts';
import { openNote } from './open-note.ts';
import { Pinning } from './pinning.tsx';
import './pinning.css';

/** Pinning step by step: the piece that was open last, else the newest that is not pinned yet. */
const Screen = () => {
  const { record } = useGarment();
  const [openId, open] = useDeviceNote(openNote(record.id));
  const works = record.onMat ?? [];
  const work =
    works.find(({ id }) => id === openId) ??
    works.findLast(({ pinned }) => pinned === undefined) ??
    works.at(-1);
  if (work === undefined)
    return (
      <div className="df-page">
        <EmptyState
          title="Nothing is on the mat yet"
          action={
            <a className="df-button" data-look="main" href={garmentHash(record.id, 'mat')}>
              Go to the mat
            </a>
          }
        >
          Choose a piece there and start pinning it.
        </EmptyState>
      </div>
    );
  return <Pinning key={work.id} kept={work} works={works} open={open} />;
};
export default Screen;
