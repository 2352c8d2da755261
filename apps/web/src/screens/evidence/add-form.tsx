import type { FormEvent, ReactNode } from 'react';
import { Button, Disclosure } from '../../kit/index.ts';

/** A kind of reading that is entered now and then, folded away until it is wanted. */
export const AddForm = ({
  title,
  about,
  add,
  onSend,
  disabled,
  children,
}: {
  title: string;
  about: ReactNode;
  add: string;
  onSend: () => void;
  disabled: boolean;
  children: ReactNode;
}) => {
  const send = (event: FormEvent): void => {
    event.preventDefault();
    onSend();
  };
  return (
    <Disclosure title={title} level={4}>
      <div>
        <form className="df-quick" onSubmit={send} aria-label={title}>
          <p>{about}</p>
          {children}
          <div>
            <Button type="submit" icon="add" isDisabled={disabled}>
              {add}
            </Button>
          </div>
        </form>
      </div>
    </Disclosure>
  );
};
