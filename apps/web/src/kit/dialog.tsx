import type { ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { Button, IconButton } from './button.tsx';
import './dialog.css';

export interface DialogProps {
  title: string;
  onClose: () => void;
  children: ReactNode;
  /** Buttons at the foot. */
  foot?: ReactNode;
  /** `alert`: asks before something is taken away. */
  role?: 'dialog' | 'alertdialog';
}

/** A sheet from the bottom of a phone, a box in the middle of a desk. Render it while it is open. */
export const Dialog = ({ title, onClose, children, foot, role = 'dialog' }: DialogProps) => (
  <ModalOverlay className="df-veil" isOpen isDismissable onOpenChange={onClose}>
    <Modal className="df-sheet">
      <AriaDialog role={role}>
        <div className="df-sheet-head">
          <Heading slot="title" level={2}>
            {title}
          </Heading>
          <IconButton icon="close" label="Close" onPress={onClose} />
        </div>
        {children}
        {foot && <div className="df-sheet-foot">{foot}</div>}
      </AriaDialog>
    </Modal>
  </ModalOverlay>
);

export interface ConfirmProps {
  title: string;
  children: ReactNode;
  /** What happens, as a verb: `Delete for good`. */
  confirm: string;
  onConfirm: () => void;
  onClose: () => void;
}

/** Asks before something that cannot be taken back. */
export const Confirm = ({ title, children, confirm, onConfirm, onClose }: ConfirmProps) => (
  <Dialog
    title={title}
    onClose={onClose}
    role="alertdialog"
    foot={
      <>
        <Button onPress={onClose} autoFocus>
          Keep
        </Button>
        <Button
          look="danger"
          onPress={() => {
            onClose();
            onConfirm();
          }}
        >
          {confirm}
        </Button>
      </>
    }
  >
    <p>{children}</p>
  </Dialog>
);
