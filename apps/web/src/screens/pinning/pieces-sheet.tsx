import type { MatWork } from '@dryflat/record';
import { Button, Dialog } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useGarment } from '../../store/index.ts';
import { stageWords } from './stage-words.ts';
import { workName } from './work-name.ts';

/** Pieces that are under way or pinned, to go to another. */
export const PiecesSheet = ({
  works,
  current,
  open,
  onClose,
}: {
  works: readonly MatWork[];
  current: string;
  open: (id: string) => void;
  onClose: () => void;
}) => {
  const { record } = useGarment();
  return (
    <Dialog title="Which piece" onClose={onClose}>
      <div className="df-pinning-list">
        {works.map((work) => (
          <Button
            key={work.id}
            look={work.id === current ? 'main' : 'plain'}
            onPress={() => {
              open(work.id);
              onClose();
            }}
          >
            {workName(work)}: {stageWords(work)}
          </Button>
        ))}
        <a className="df-button" data-look="quiet" href={garmentHash(record.id, 'mat')}>
          Another piece, from the mat
        </a>
      </div>
    </Dialog>
  );
};
