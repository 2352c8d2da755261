import { useEffect, useRef, useState } from 'react';
import { type FieldPainter, fieldPainter } from './field-painter.ts';
import type { MatFrame } from './mat-frame.ts';

/** Pixels of a canvas side that every device has. */
const LARGEST = 4096;

/** A field as it is painted: places on the mat, mm, and the stretch over the wet size at each. */
export interface ShownField {
  readonly points: Float32Array;
  readonly triangles: Uint32Array;
  readonly overWet: Float32Array;
}

/** The stretch of the piece in colour, under everything else. Its numbers are in the text beside it. */
export const FieldCanvas = ({
  frame,
  field,
  most,
}: {
  frame: MatFrame;
  field: ShownField;
  most: number;
}) => {
  const canvas = useRef<HTMLCanvasElement>(null);
  const painter = useRef<FieldPainter | null>(null);
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    const element = canvas.current;
    if (element === null) return;
    const start = (): void => {
      painter.current = fieldPainter(element);
      setMissing(painter.current === null);
    };
    const lost = (event: Event): void => {
      event.preventDefault();
      setMissing(true);
    };
    start();
    element.addEventListener('webglcontextlost', lost);
    element.addEventListener('webglcontextrestored', start);
    return () => {
      element.removeEventListener('webglcontextlost', lost);
      element.removeEventListener('webglcontextrestored', start);
    };
  }, []);
  const [width, height] = [frame.width * frame.scale, frame.height * frame.scale];
  const dense = Math.min(globalThis.devicePixelRatio || 1, 2, LARGEST / Math.max(width, height, 1));
  // Painted after every change of what it shows: a canvas forgets when its size is set.
  useEffect(() => {
    if (missing) return;
    painter.current?.paint({ ...field, most, view: frame });
  }, [field, most, frame, missing]);
  return (
    <>
      <canvas
        ref={canvas}
        className="df-mat-field"
        width={Math.round(width * dense)}
        height={Math.round(height * dense)}
      />
      {missing && (
        <p className="df-mat-nofield df-soft">
          This device does not draw the colours of the stretch; its numbers are below.
        </p>
      )}
    </>
  );
};
