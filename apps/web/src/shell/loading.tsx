/** Says that something is coming, but only once it takes longer than a blink. */
export const Loading = () => (
  <p className="df-loading" role="status">
    Fetching…
  </p>
);
