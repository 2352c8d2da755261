import { Component, type ReactNode } from 'react';
import { Button, Notice } from '../kit/index.ts';

/** A bug of ours in some part of the page: told in its words, with a way on. Nothing kept is lost. */
export class Broken extends Component<{ children: ReactNode }, { error: Error | null }> {
  override state: { error: Error | null } = { error: null };

  static getDerivedStateFromError(error: Error): { error: Error } {
    return { error };
  }

  override render(): ReactNode {
    const { error } = this.state;
    if (error === null) return this.props.children;
    return (
      <div className="df-page df-stack" role="alert">
        <h2>This part does not work</h2>
        <Notice tone="wrong">
          A fault of the app, not of yours: {error.message}. Everything you typed is kept.
        </Notice>
        <div className="df-row">
          <Button look="main" onPress={() => location.reload()}>
            Load it again
          </Button>
          <Button onPress={() => location.assign('/')}>Go to the shelf</Button>
        </div>
      </div>
    );
  }
}
