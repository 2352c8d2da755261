import { Confirm } from '../../kit/index.ts';

/** Asks before everything on this device is deleted. */
const ConfirmErase = ({ onConfirm, onClose }: { onConfirm: () => void; onClose: () => void }) => (
  <Confirm
    title="Delete every garment on this device?"
    confirm="Delete everything"
    onConfirm={onConfirm}
    onClose={onClose}
  >
    Every garment goes, those in the trash too, and nothing brings them back. Files that you saved
    elsewhere stay.
  </Confirm>
);
export default ConfirmErase;
