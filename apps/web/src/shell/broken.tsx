import { Component, lazy, type ReactNode, Suspense } from 'react';
import { Button, Notice } from '../kit/index.ts';
import { KeepingLine } from './keeping-line.tsx';
import { Loading } from './loading.tsx';

const RecordFault = lazy(() => import('./record-fault.tsx'));

interface BrokenProps {
  /** The garment that is shown here: perhaps it is its record that is not sound. */
  garment?: string;
  /** All of the page and not a part of it. */
  page?: boolean;
  children: ReactNode;
}

/** Something broke while it was drawn: told in its words, with a way on. */
export class Broken extends Component<BrokenProps, { error: Error | null }> {
  override state: { error: Error | null } = { error: null };

  static getDerivedStateFromError(error: Error): { error: Error } {
    return { error };
  }

  override render(): ReactNode {
    const { error } = this.state;
    const { garment, page = false, children } = this.props;
    if (error === null) return children;
    const ours = <OurFault error={error} page={page} />;
    if (garment === undefined) return ours;
    return (
      <Suspense fallback={<Loading />}>
        <RecordFault garment={garment} page={page} otherwise={ours} />
      </Suspense>
    );
  }
}

const OurFault = ({ error, page }: { error: Error; page: boolean }) => {
  const Root = page ? 'main' : 'div';
  return (
    <Root className="df-page" role={page ? undefined : 'alert'}>
      <h2>This part does not work</h2>
      <Notice tone="wrong">A fault of the app, not of yours: {error.message}</Notice>
      <KeepingLine />
      <div className="df-row">
        <Button look="main" onPress={() => location.reload()}>
          Load it again
        </Button>
        <Button onPress={() => location.assign('/')}>Go to the shelf</Button>
      </div>
    </Root>
  );
};
