import { lazy, Suspense } from 'react';
import type { ShelfEntry } from '../../store/index.ts';

const Begin = lazy(() => import('./begin.tsx'));
const BringIn = lazy(() => import('./bring-in.tsx'));
const GarmentSheet = lazy(() => import('./garment-sheet.tsx'));

/** A dialog of the shelf; each is loaded when it is first opened. */
export type Door =
  | { readonly kind: 'begin' }
  | { readonly kind: 'bring-in'; readonly text: string | null }
  | { readonly kind: 'garment'; readonly entry: ShelfEntry };

export const Doors = ({ door, onClose }: { door: Door | null; onClose: () => void }) =>
  door && (
    <Suspense>
      {door.kind === 'begin' && <Begin onClose={onClose} />}
      {door.kind === 'bring-in' && <BringIn given={door.text} onClose={onClose} />}
      {door.kind === 'garment' && <GarmentSheet entry={door.entry} onClose={onClose} />}
    </Suspense>
  );
