import './result.css';

/** Too small, in range, too large, side by side; drawn only, the words stand beside it. */
export const ChanceBar = ({
  fits,
  small = 0,
  large = 0,
}: {
  fits: number;
  small?: number;
  large?: number;
}) => (
  <div className="df-chance" aria-hidden="true">
    <i data-part="small" style={{ width: `${100 * small}%` }} />
    <i data-part="fits" style={{ width: `${100 * fits}%` }} />
    <i data-part="large" style={{ width: `${100 * large}%` }} />
  </div>
);
