import './result.css';

const SAYS = {
  range: 'forecast, 9 times in 10',
  wanted: 'wanted',
  target: 'the pattern says',
  mark: 'measured',
} as const;

/** What the parts of a drawn range mean. */
export const Key = ({ of }: { of: readonly (keyof typeof SAYS)[] }) => (
  <ul className="df-legend">
    {of.map((part) => (
      <li key={part}>
        <i data-of={part} aria-hidden="true" />
        {SAYS[part]}
      </li>
    ))}
  </ul>
);
