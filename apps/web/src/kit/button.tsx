import type { ReactNode } from 'react';
import { Button as AriaButton, type ButtonProps as AriaButtonProps } from 'react-aria-components';
import './button.css';
import { Icon, type IconName } from './icons.tsx';

export interface ButtonProps extends Omit<AriaButtonProps, 'className' | 'style' | 'children'> {
  /** `main`: the one thing to do here. `quiet`: beside others. `danger`: takes something away. */
  look?: 'plain' | 'main' | 'quiet' | 'danger';
  icon?: IconName;
  children: ReactNode;
}

export const Button = ({ look = 'plain', icon, children, ...rest }: ButtonProps) => (
  <AriaButton {...rest} className="df-button" data-look={look}>
    {icon && <Icon name={icon} />}
    {children}
  </AriaButton>
);

export interface IconButtonProps extends Omit<ButtonProps, 'children' | 'icon'> {
  icon: IconName;
  /** What it does, for those who do not see the drawing. */
  label: string;
}

export const IconButton = ({ look = 'quiet', icon, label, ...rest }: IconButtonProps) => (
  <AriaButton {...rest} className="df-button" data-look={look} data-only-icon aria-label={label}>
    <Icon name={icon} />
  </AriaButton>
);
