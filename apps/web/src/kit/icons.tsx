/** Drawn for this app on a 24-unit square, one line weight, round ends. */
const PATHS = {
  add: 'M12 5v14M5 12h14',
  less: 'M5 12h14',
  back: 'M14.5 5.5 8 12l6.5 6.5',
  onward: 'M9.5 5.5 16 12l-6.5 6.5',
  close: 'M6 6l12 12M18 6 6 18',
  done: 'M5 12.5l4.5 4.5L19 7.5',
  more: 'M5 7h14M5 12h9M5 17h5',
  undo: 'M4 9.5h10a5 5 0 0 1 0 10H9M4 9.5 8 5.5M4 9.5l4 4',
  redo: 'M20 9.5H10a5 5 0 0 0 0 10h5M20 9.5l-4-4M20 9.5l-4 4',
  warn: 'M12 4 3 19.5h18L12 4zM12 10v4.5M12 17v.2',
  info: 'M12 11v6M12 7.4v.2M12 3a9 9 0 1 0 0 18 9 9 0 0 0 0-18z',
  copy: 'M9 9h10v11H9zM5 15V4h10',
  bin: 'M5 7.5h14M9.5 7.5V5h5v2.5M7 7.5 8 20h8l1-12.5M10.5 11v5.5M13.5 11v5.5',
  fetch: 'M12 4v11M7.5 10.5 12 15l4.5-4.5M4.5 19.5h15',
  send: 'M12 15V4M7.5 8.5 12 4l4.5 4.5M4.5 19.5h15',
  pen: 'M5 19l1-4L16 5l3 3L9 18l-4 1zM13.5 7.5l3 3',
  up: 'M6 14.5l6-6 6 6',
  down: 'M6 9.5l6 6 6-6',
  /* A tape between two ends, and where the edge is likely to lie. */
  forecast: 'M3 7v10M21 7v10M3 14h18M6 14c3.5 0 3-8 6-8s2.5 8 6 8',
  /* A head and shoulders with a tape around. */
  wearer: 'M12 3a3.5 3.5 0 1 0 0 7 3.5 3.5 0 0 0 0-7zM5 21c0-5 2.8-8 7-8s7 3 7 8M6.3 17.2h11.4',
  /* A leaf of paper with a table. */
  pattern: 'M6 3.5h9l3.5 3.5v13.5H6zM15 3.5V7h3.5M9 11.5h6.5M9 14.5h6.5M9 17.5h4',
  /* A wound cone. */
  yarn: 'M9.5 4h5L18 20H6zM8.6 8.2l7-1.6M7.7 12.2l8.9-2.1M6.9 16.2l10.6-2.5',
  /* A square of knitting under a ruler. */
  evidence: 'M4 9h13v11H4zM4 5.5h13M4 4v3M8.3 4.5v2M12.7 4.5v2M17 4v3M8.3 9v11M12.7 9v11M4 14.5h13',
  /* One thread that parts into three. */
  routes: 'M12 21v-5.5M12 15.5V3.5M12 15.5c0-5.5-7-4-7-12M12 15.5c0-5.5 7-4 7-12',
  /* Stitches on a needle. */
  counts:
    'M3 7h18M6 7c0 4 3 4 3 8M9 7c0 4-3 4-3 8M12 7c0 4 3 4 3 8M15 7c0 4-3 4-3 8M18 7c0 4 2 5 2 8M6 18.5h.2M9 18.5h.2M12 18.5h.2M15 18.5h.2',
  /* Front of a vest. */
  pieces: 'M8 4v3.5c0 2-1.5 3.5-3 4V20h14v-8.5c-1.5-.5-3-2-3-4V4h-2c0 4-4 4-4 0z',
  /* A leaf of the calendar with a row of stitches. */
  pace: 'M4 6h16v14H4zM4 10h16M8 3.5V7M16 3.5V7M7 13.5l1.7 3.3 1.6-3.3 1.7 3.3 1.7-3.3 1.6 3.3 1.7-3.3',
  /* A piece on tiles, held by pins. */
  mat: 'M3 3.5h18v17H3zM12 3.5v17M3 12h18M7 8.5h10l-1 8H8zM7 7v.2M17 7v.2M7.5 18v.2M16.5 18v.2',
  /* A clock, damp air rising from it. */
  dry: 'M12 10a5.75 5.75 0 1 0 0 11.5 5.75 5.75 0 0 0 0-11.5zM12 13v3l2 1.3M6.5 7.5c1.2-1.3-1.2-2.2 0-4M12 6.5c1.2-1.3-1.2-2.2 0-4M17.5 7.5c1.2-1.3-1.2-2.2 0-4',
  /* Hung up to dry, a drop below. */
  after:
    'M3 4.5h18M7 4.5v8.5h10V4.5M12 16c-1.5 1.8-2.2 2.7-2.2 3.5a2.2 2.2 0 0 0 4.4 0c0-.8-.7-1.7-2.2-3.5z',
  /* A letter, folded. */
  report: 'M3.5 6h17v12.5h-17zM3.5 6.5 12 13l8.5-6.5M8 15.5h-1.5M17.5 15.5H16',
  /* A sheet that comes out below a roller. */
  paper: 'M7 9V3.5h10V9M3.5 9h17v7.5H17M7 16.5H3.5V9M7 13.5h10v7H7zM10 16h4M10 18h4',
} as const;

export type IconName = keyof typeof PATHS;

/** A drawing beside words; it says nothing itself. */
export const Icon = ({ name }: { name: IconName }) => (
  <svg
    className="df-icon"
    viewBox="0 0 24 24"
    fill="none"
    stroke="currentColor"
    strokeWidth="1.75"
    strokeLinecap="round"
    strokeLinejoin="round"
    aria-hidden="true"
  >
    <path d={PATHS[name]} />
  </svg>
);
