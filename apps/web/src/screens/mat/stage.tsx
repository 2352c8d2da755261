import { useMemo, useRef } from 'react';
import { useSheet } from '../../schematic/use-sheet.ts';
import type { Cloth, Lying, Planned } from '../../worker/mat/index.ts';
import { FieldCanvas, type ShownField } from './field-canvas.tsx';
import { frameOf, type MatFrame, outlinePath, tileLines } from './mat-frame.ts';
import { MeasureLines } from './measure-lines.tsx';
import { outwardAt } from './outward.ts';
import { PinsLayer } from './pins-layer.tsx';
import type { PinPlaces } from './use-mat.ts';
import { usePinDrag } from './use-pin-drag.ts';

export interface StageProps {
  readonly planned: Planned;
  readonly cloth: Cloth | null;
  readonly lying: Lying | null;
  readonly places: PinPlaces;
  readonly chosen: number;
  readonly most: number;
  readonly closer: boolean;
  readonly describedBy: string;
  readonly choose: (pin: number) => void;
  readonly place: (pin: number, x: number, y: number) => void;
  /** The pin was let go of. */
  readonly settle: () => void;
  /** What the keys do to the chosen pin. */
  readonly onKeyDown: (event: React.KeyboardEvent) => void;
  readonly chosenLabel: string;
}

/** Tallest drawing, as a share of the window. */
const TALLEST = 0.72;

/** Letters in the drawing are no larger than a share of its width, as they stand close; the lists have all of them. */
const LETTERS = 19;

/** The piece on its mat: tiles, the stretch in colour, outlines, measures and pins. */
export const Stage = (props: StageProps) => {
  const { planned, cloth, lying, places, chosen, most, closer, choose, place, settle } = props;
  const around = useRef<HTMLDivElement>(null);
  const stage = useRef<HTMLDivElement>(null);
  const { width, rem } = useSheet(around);
  const frame = useMemo(
    () => frameOf(planned, width, TALLEST * globalThis.innerHeight, closer),
    [planned, width, closer],
  );
  const fixed = useMemo(
    () => new Set(planned.plan.pins.flatMap(({ kind }, k) => (kind === 'wire' ? [k] : []))),
    [planned],
  );
  const asPlanned = useMemo(() => plannedField(planned), [planned]);
  const field = useMemo(
    () => (cloth && lying ? { ...lying, triangles: cloth.triangles } : asPlanned),
    [cloth, lying, asPlanned],
  );
  usePinDrag(stage, { frame, places, fixed, choose, place, settle, still: cloth === null });
  const [x, y] = places[chosen] ?? [0, 0];
  return (
    <div className="df-mat-around" ref={around}>
      <section className="df-mat-scroll" aria-label="The mat" {...(closer && { tabIndex: 0 })}>
        <div
          ref={stage}
          className="df-mat-stage"
          data-busy={cloth === null || undefined}
          style={{ width: frame.width * frame.scale, height: frame.height * frame.scale }}
        >
          <Tiles frame={frame} planned={planned} />
          <FieldCanvas frame={frame} field={field} most={most} />
          <Drawing {...props} frame={frame} rem={Math.min(rem, width / LETTERS)} />
          {places.length > 0 && (
            <button
              type="button"
              className="df-mat-chosen"
              aria-label={props.chosenLabel}
              aria-describedby={props.describedBy}
              style={{ left: (x - frame.x) * frame.scale, top: (y - frame.y) * frame.scale }}
              onKeyDown={props.onKeyDown}
            />
          )}
        </div>
      </section>
    </div>
  );
};

const plannedField = ({ plan }: Planned): ShownField => {
  const { points, triangles, overWet } = plan.stretchUse.field;
  return {
    points: Float32Array.from(points),
    triangles: Uint32Array.from(triangles),
    overWet: Float32Array.from(overWet),
  };
};

const Tiles = ({ frame, planned }: { frame: MatFrame; planned: Planned }) => (
  <svg className="df-mat-tiles" aria-hidden="true">
    <path d={tileLines(frame, planned.mat)} />
  </svg>
);

/** Where the fabric is stretched most. */
const CROSS = 'M-5 -5L5 5M-5 5L5 -5';

const Drawing = ({
  planned,
  cloth,
  lying,
  places,
  chosen,
  frame,
  rem,
}: StageProps & { frame: MatFrame; rem: number }) => {
  const { outlines, pins } = planned.plan;
  const pinned = useMemo(
    () =>
      cloth && lying
        ? [...cloth.ring].map((node) => ({
            x: lying.points[2 * node]!,
            y: lying.points[2 * node + 1]!,
          }))
        : outlines.pinned,
    [cloth, lying, outlines],
  );
  const still = useMemo(
    () => [outlinePath(outlines.rest, frame), outlinePath(outlines.wanted, frame)],
    [outlines, frame],
  );
  const out = useMemo(
    () => pins.map(({ xMm, yMm }) => outwardAt(outlines.pinned, { x: xMm, y: yMm })),
    [pins, outlines],
  );
  // Letters keep clear of pins as planned, and stay where they are while one is dragged.
  const start = useMemo(() => pins.map(({ xMm, yMm }) => [xMm, yMm] as const), [pins]);
  const loose = useMemo(() => new Set(lying?.loose ?? []), [lying]);
  return (
    <svg
      className="df-mat-drawing"
      role="img"
      aria-label={`${planned.piece.name} on the mat with ${pins.length} things that hold it; all of it is told in the lists`}
    >
      <path className="df-mat-rest" d={still[0]} />
      <path className="df-mat-wanted" d={still[1]} />
      <path className="df-mat-pinned" d={outlinePath(pinned, frame)} />
      {cloth && lying && (
        <MeasureLines
          rulers={cloth.rulers}
          places={start}
          points={lying.points}
          frame={frame}
          rem={rem}
        />
      )}
      {lying && (
        <g
          className="df-mat-worst"
          transform={`translate(${(lying.worst.x - frame.x) * frame.scale} ${(lying.worst.y - frame.y) * frame.scale})`}
        >
          <path d={CROSS} />
          <path d={CROSS} />
        </g>
      )}
      <PinsLayer
        pins={pins}
        places={places}
        frame={frame}
        chosen={chosen}
        rem={rem}
        loose={loose}
        out={out}
      />
    </svg>
  );
};
