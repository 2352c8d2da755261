/** The first stop of the keyboard: past the bars to what the page is about. */
export const SkipLink = () => (
  <button
    type="button"
    className="df-skip"
    onClick={() => document.getElementById('main')?.focus()}
  >
    Skip to the content
  </button>
);
