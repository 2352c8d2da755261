import { IconButton, kindName } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { type ShelfEntry, useView } from '../../store/index.ts';
import type { Door } from './doors.tsx';

/** One garment on the shelf: its name opens it. */
export const GarmentRow = ({
  entry,
  onOpenDoor,
}: {
  entry: ShelfEntry;
  onOpenDoor: (door: Door) => void;
}) => {
  const { words } = useView();
  const name = entry.name || 'No name yet';
  return (
    <li className="df-garment">
      <a href={garmentHash(entry.id)}>
        <strong>{name}</strong>
        <span className="df-soft">
          {kindName(entry.kind, words)}
          {entry.wearer && ` for ${entry.wearer}`}
        </span>
      </a>
      <IconButton
        icon="more"
        label={`More for ${name}`}
        onPress={() => onOpenDoor({ kind: 'garment', entry })}
      />
    </li>
  );
};
