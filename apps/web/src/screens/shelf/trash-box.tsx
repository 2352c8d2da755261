import { lazy, Suspense, useState } from 'react';
import { Button, Disclosure, toast } from '../../kit/index.ts';
import { emptyTrash, restoreGarment, type ShelfEntry } from '../../store/index.ts';

const EmptyTrash = lazy(() => import('./confirm-empty.tsx'));

/** What was put away: it can come back until the trash is emptied. */
export const TrashBox = ({ entries }: { entries: readonly ShelfEntry[] }) => {
  const [asking, setAsking] = useState(false);
  const empty = async (): Promise<void> => {
    try {
      await emptyTrash();
      toast('The trash is empty.');
    } catch {
      toast('Not all of it could be deleted. Close other tabs of Dryflat, and try again.');
    }
  };
  return (
    <>
      <Disclosure level={2} title={`In the trash: ${entries.length}`}>
        <div className="df-stack">
          <ul className="df-garments">
            {entries.map(({ id, name }) => (
              <li key={id} className="df-garment" data-trashed>
                <span>{name || 'No name yet'}</span>
                <Button aria-label={`Take ${name} out`} onPress={() => void restoreGarment(id)}>
                  Take out
                </Button>
              </li>
            ))}
          </ul>
          <div>
            <Button icon="bin" onPress={() => setAsking(true)}>
              Empty the trash
            </Button>
          </div>
        </div>
      </Disclosure>
      {asking && (
        <Suspense>
          <EmptyTrash
            count={entries.length}
            onConfirm={() => void empty()}
            onClose={() => setAsking(false)}
          />
        </Suspense>
      )}
    </>
  );
};
