import { Confirm } from '../../kit/index.ts';

/** Asks before garments are deleted for good. */
const ConfirmEmpty = ({
  count,
  onConfirm,
  onClose,
}: {
  count: number;
  onConfirm: () => void;
  onClose: () => void;
}) => (
  <Confirm
    title="Empty the trash?"
    confirm="Delete for good"
    onConfirm={onConfirm}
    onClose={onClose}
  >
    {count === 1 ? 'One garment is' : `${count} garments are`} deleted from this device, with every
    measurement and note. Nothing brings {count === 1 ? 'it' : 'them'} back.
  </Confirm>
);
export default ConfirmEmpty;
