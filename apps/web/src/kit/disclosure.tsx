import type { ReactNode } from 'react';
import {
  Disclosure as AriaDisclosure,
  Button,
  DisclosurePanel,
  Heading,
} from 'react-aria-components';
import './disclosure.css';
import { Icon } from './icons.tsx';

export interface DisclosureProps {
  title: ReactNode;
  /** Level of its heading, 3 by default. */
  level?: 2 | 3 | 4;
  startsOpen?: boolean;
  children: ReactNode;
}

/** Something to look into. */
export const Disclosure = ({ title, level = 3, startsOpen = false, children }: DisclosureProps) => (
  <AriaDisclosure className="df-disclosure" defaultExpanded={startsOpen}>
    <Heading level={level}>
      <Button slot="trigger" className="df-disclosure-button">
        <Icon name="down" />
        {title}
      </Button>
    </Heading>
    <DisclosurePanel className="df-disclosure-panel">{children}</DisclosurePanel>
  </AriaDisclosure>
);
