/// <reference lib="webworker" />

/**
 * Answers what a page asks, in a worker: questions that arrive while one is worked on wait, and only
 * the last of them is worked on next.
 */
export const answerLatest = <Q, A>(answer: (asked: Q) => A): void => {
  let latest: { readonly asked: Q } | null = null;
  const work = (): void => {
    if (latest === null) return;
    const { asked } = latest;
    latest = null;
    postMessage(answer(asked));
  };
  addEventListener('message', (event: MessageEvent<Q>) => {
    const idle = latest === null;
    latest = { asked: event.data };
    if (idle) setTimeout(work, 0);
  });
};
