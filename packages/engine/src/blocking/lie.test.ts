import { expect, it } from 'vitest';
import { rectangle } from './check/pieces.ts';
import { Effort } from './effort.ts';
import { solveWith } from './lie.ts';
import { openSheet, placeIn } from './piece-sheet.ts';

it('B25: a pin that would fold the fabric over is let go, and the others stay', () => {
  const opened = openSheet(rectangle([300, 200], [300, 200]), 300, new Effort());
  if (!opened.ok) throw new Error(JSON.stringify(opened.faults));
  const sheet = opened.value;
  const corners = sheet.ring.flatMap(({ role }, k) => (role === 'corner' ? [k] : []));
  // Beside a corner, sent past it along the edge by twice the way there.
  const [corner, beside] = [corners[0]!, (corners[0]! + 1) % sheet.ring.length];
  const [from, to] = [sheet.ring[beside]!.rest, sheet.ring[corner]!.rest];
  const past = { x: from.x + 3 * (to.x - from.x), y: from.y + 3 * (to.y - from.y) };
  const pins = [...corners, beside].map((k) => ({
    node: sheet.ring[k]!.node,
    ...(k === beside ? past : sheet.ring[k]!.rest),
  }));
  const folded = solveWith(sheet, { held: [], pins, slides: [] }, true);
  expect(folded.turned).toBeGreaterThan(0);
  expect(folded.converged).toBe(false);
  const eq = solveWith(sheet, { held: [], pins, slides: [] });
  expect(eq).toMatchObject({ turned: 0, converged: true });
  expect(eq.released).toContain(pins.length - 1);
  for (const k of corners.slice(1)) {
    const at = placeIn(eq.points, sheet.ring[k]!.node);
    expect(Math.hypot(at.x - sheet.ring[k]!.rest.x, at.y - sheet.ring[k]!.rest.y)).toBeLessThan(1);
  }
});
