import { fillLengths } from '@dryflat/engine/units';
import type { Drawing } from '@dryflat/paper/schematic';
import { useId } from 'react';
import { Weave } from './weave.tsx';

const Swatch = ({ of }: { readonly of: 'wanted' | 'forecast' | 'band' }) => {
  const id = useId();
  return (
    <svg className="df-lines-swatch" width="32" height="16" aria-hidden="true">
      {of === 'band' ? (
        <>
          <defs>
            <Weave id={id} />
          </defs>
          <rect className="df-piece-band" width="32" height="16" fill={`url(#${id})`} />
        </>
      ) : (
        <path className={`df-piece-${of}`} d="M1 8 H31" />
      )}
    </svg>
  );
};

/** What the lines mean; nothing where there is only one. */
const Key = ({ wanted }: { readonly wanted: boolean }) => (
  <ul className="df-lines">
    {wanted && (
      <li>
        <Swatch of="wanted" /> wanted
      </li>
    )}
    <li>
      <Swatch of="forecast" /> forecast, most likely
    </li>
    <li>
      <Swatch of="band" /> nine times in ten
    </li>
  </ul>
);

interface Props {
  readonly drawing: Drawing;
  readonly forecast: boolean;
  readonly print: (mm: number) => string;
  /** Full name of a landmark. */
  readonly children: (landmark: string) => string;
}

/** Under the drawing: its key, what could not be drawn as given, and what was filled in. */
export const SchematicNotes = ({ drawing, forecast, print, children: name }: Props) => {
  const { assumed, notices } = drawing.main;
  const filled = assumed.map((each) => `${name(each.landmark)} ${print(each.mm)}`);
  return (
    <figcaption className="df-notes">
      {forecast && <Key wanted={drawing.pieces.some((piece) => piece.wanted !== null)} />}
      {notices.map((notice) => (
        <p key={notice.code + notice.landmark}>
          <strong>{name(notice.landmark)}.</strong> {fillLengths(notice.text, print)}
        </p>
      ))}
      {filled.length > 0 && (
        <p className="df-notes-filled">
          Not given, so drawn at a usual proportion: {filled.join(', ')}.
        </p>
      )}
    </figcaption>
  );
};
