import { type ReactNode, useRef, useState } from 'react';
import { Notice } from '../../kit/index.ts';
import { useDrafts } from '../../store/index.ts';

export interface Typed {
  /** Does it, unless something cannot be read yet or nothing was told: that is said then. */
  readonly unlessHalf: (then: () => void) => () => void;
  readonly told: ReactNode;
}

/** What was typed under these paths, asked once the field was left. `nothing`: nothing was told at all. */
export const useTyped = (paths: string, nothing = false): Typed => {
  const half = Object.keys(useDrafts()).some((path) => path.startsWith(paths));
  const [pressed, setPressed] = useState(false);
  const now = useRef({ half, nothing });
  now.current = { half, nothing };
  const wrong = half
    ? 'One entry cannot be read yet: mend it or empty it.'
    : nothing
      ? 'Nothing is told yet: give one distance, or say how the fabric comes.'
      : null;
  return {
    unlessHalf: (then) => () => {
      if (now.current.half || now.current.nothing) setPressed(true);
      else then();
    },
    told: pressed && wrong && (
      <div role="alert">
        <Notice tone="wrong">{wrong}</Notice>
      </div>
    ),
  };
};
