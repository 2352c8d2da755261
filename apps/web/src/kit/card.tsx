import type { ReactNode } from 'react';
import './card.css';
import { Icon } from './icons.tsx';

/** A leaf of paper that holds one thing; its title, if any, sits on a running stitch. */
export const Card = ({
  title,
  level = 2,
  children,
}: {
  title?: ReactNode;
  level?: 2 | 3;
  children: ReactNode;
}) => {
  const Title = `h${level}` as 'h2' | 'h3';
  return (
    <section className="df-card">
      {title && <Title>{title}</Title>}
      {children}
    </section>
  );
};

/** Fields that belong together under one legend. */
export const FieldGroup = ({ legend, children }: { legend: ReactNode; children: ReactNode }) => (
  <fieldset className="df-group">
    <legend>{legend}</legend>
    {children}
  </fieldset>
);

/** Says what would be here and offers the first step. */
export const EmptyState = ({
  title,
  level = 2,
  children,
  action,
}: {
  title: string;
  level?: 1 | 2 | 3;
  children?: ReactNode;
  action?: ReactNode;
}) => {
  const Title = `h${level}` as 'h1' | 'h2' | 'h3';
  return (
    <div className="df-empty">
      <Title>{title}</Title>
      {children && <p>{children}</p>}
      {action && <div className="df-row">{action}</div>}
    </div>
  );
};

/** Something to know. `unsure`: a wide or assumed number; `wrong`: has to be mended. */
export const Notice = ({
  tone = 'plain',
  children,
}: {
  tone?: 'plain' | 'unsure' | 'wrong' | 'good';
  children: ReactNode;
}) => (
  <div className="df-notice" data-tone={tone}>
    <Icon name={tone === 'good' ? 'done' : tone === 'plain' ? 'info' : 'warn'} />
    <div>{children}</div>
  </div>
);
