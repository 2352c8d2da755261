import { lazy, Suspense, useState } from 'react';
import { Icon, IconButton } from '../kit/index.ts';
import { useGarment } from '../store/index.ts';
import { SHELF } from './hash.ts';
import { UnitSwitch } from './unit-switch.tsx';
import { useUndoKeys } from './use-undo-keys.ts';

const GarmentMenu = lazy(() => import('./garment-menu.tsx'));

/** The bar over a garment: back to the shelf, undo and redo, the unit, everything else. */
export const GarmentHead = () => {
  const { canUndo, canRedo, undo, redo } = useGarment();
  useUndoKeys();
  const [menu, setMenu] = useState(false);
  return (
    <header className="df-head">
      <a className="df-button" data-look="quiet" href={SHELF}>
        <Icon name="back" />
        Shelf
      </a>
      <div className="df-head-tools">
        <IconButton icon="undo" label="Undo" isDisabled={!canUndo} onPress={undo} />
        <IconButton icon="redo" label="Redo" isDisabled={!canRedo} onPress={redo} />
        <UnitSwitch />
        <IconButton icon="more" label="More for this garment" onPress={() => setMenu(true)} />
      </div>
      {menu && (
        <Suspense>
          <GarmentMenu onClose={() => setMenu(false)} />
        </Suspense>
      )}
    </header>
  );
};
