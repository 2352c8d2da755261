import { type RefObject, useEffect, useRef } from 'react';
import type { MatFrame } from './mat-frame.ts';
import type { PinPlaces } from './use-mat.ts';

/** A finger this near takes a pin, px: more than half of the least target of 44 px. */
const REACH = 26;

export interface PinDrag {
  readonly frame: MatFrame;
  readonly places: PinPlaces;
  /** Things that follow others and are not moved themselves. */
  readonly fixed: ReadonlySet<number>;
  readonly choose: (pin: number) => void;
  readonly place: (pin: number, x: number, y: number) => void;
  /** The pin was let go of. */
  readonly settle: () => void;
  readonly still: boolean;
}

/** The nearest pin within reach of a place in px; −1 where there is none. */
export const pinAt = (
  { frame, places }: Pick<PinDrag, 'frame' | 'places'>,
  x: number,
  y: number,
): number => {
  let [best, off] = [-1, REACH];
  places.forEach(([px, py], k) => {
    const d = Math.hypot((px - frame.x) * frame.scale - x, (py - frame.y) * frame.scale - y);
    if (d < off) [best, off] = [k, d];
  });
  return best;
};

/**
 * Drags pins with mouse, pen and finger. The pin keeps its distance from the finger, so that touching it
 * does not move it; a finger that lands beside every pin scrolls the page as ever.
 */
export const usePinDrag = (element: RefObject<HTMLElement | null>, drag: PinDrag): void => {
  const latest = useRef(drag);
  latest.current = drag;
  useEffect(() => {
    const stage = element.current;
    if (stage === null) return;
    let held: { pin: number; pointer: number; dx: number; dy: number } | null = null;
    const at = (event: { clientX: number; clientY: number }): [number, number] => {
      const box = stage.getBoundingClientRect();
      return [event.clientX - box.left, event.clientY - box.top];
    };
    const down = (event: PointerEvent): void => {
      if (event.button !== 0 || held !== null) return;
      const now = latest.current;
      const [x, y] = at(event);
      const pin = pinAt(now, x, y);
      if (pin < 0) return;
      now.choose(pin);
      if (now.still || now.fixed.has(pin)) return;
      const [px, py] = now.places[pin]!;
      const { frame } = now;
      held = {
        pin,
        pointer: event.pointerId,
        dx: px - (frame.x + x / frame.scale),
        dy: py - (frame.y + y / frame.scale),
      };
      stage.setPointerCapture(event.pointerId);
    };
    const move = (event: PointerEvent): void => {
      if (held === null || event.pointerId !== held.pointer) return;
      const [x, y] = at(event);
      const { frame, place } = latest.current;
      place(held.pin, frame.x + x / frame.scale + held.dx, frame.y + y / frame.scale + held.dy);
    };
    const up = (event: PointerEvent): void => {
      if (event.pointerId !== held?.pointer) return;
      held = null;
      latest.current.settle();
    };
    // Keeps a finger on a pin from scrolling: what a pointer event cannot ask for.
    const touch = (event: TouchEvent): void => {
      const finger = event.touches[0];
      if (event.touches.length === 1 && finger && pinAt(latest.current, ...at(finger)) >= 0)
        event.preventDefault();
    };
    stage.addEventListener('pointerdown', down);
    stage.addEventListener('pointermove', move);
    stage.addEventListener('pointerup', up);
    stage.addEventListener('pointercancel', up);
    stage.addEventListener('touchstart', touch, { passive: false });
    return () => {
      stage.removeEventListener('pointerdown', down);
      stage.removeEventListener('pointermove', move);
      stage.removeEventListener('pointerup', up);
      stage.removeEventListener('pointercancel', up);
      stage.removeEventListener('touchstart', touch);
    };
  }, [element]);
};
