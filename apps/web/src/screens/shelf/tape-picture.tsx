/**
 * The picture of the shelf: a knitted edge over a tape, and the span in which it is likely to lie.
 * Drawn in user units of a tape's eighths; it says nothing that the words beside it do not.
 */
export const TapePicture = () => (
  <svg className="df-tape" viewBox="0 0 320 96" aria-hidden="true">
    <rect className="df-tape-likely" x="196" y="2" width="72" height="60" rx="6" />
    <g className="df-tape-fabric">
      {[14, 26, 38].map((y) => (
        <path key={y} d={courseFrom(y)} />
      ))}
    </g>
    <path className="df-tape-edge" d="M232 6v44" />
    <rect className="df-tape-band" x="-6" y="58" width="332" height="32" rx="4" />
    {Array.from({ length: 33 }, (_, i) => i * 10).map((x) => (
      <path
        key={x}
        className="df-tape-mark"
        d={`M${x} 58v${x % 80 === 0 ? 16 : x % 40 === 0 ? 11 : 6}`}
      />
    ))}
  </svg>
);

/** One course of loops, from the left edge to the fabric's own. */
const courseFrom = (y: number): string =>
  `M4 ${y}${Array.from({ length: 19 }, () => 'l6 7l6-7').join('')}`;
