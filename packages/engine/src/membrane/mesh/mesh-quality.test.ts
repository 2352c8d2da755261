import { describe, expect, it } from 'vitest';
import { anglesOf, areaOf, meshQuality, smallestAngleOf } from './mesh-quality.ts';
import { structuredRectangle } from './structured-rectangle.ts';

describe('quality of a mesh', () => {
  const mesh = structuredRectangle(30, 40, 1, 1);

  it('M13: a 3-4-5 triangle has its angles, edges and area', () => {
    const angles = [...anglesOf(mesh, 0)].sort((a, b) => a - b);
    const acute = (Math.atan(3 / 4) * 180) / Math.PI;
    // Rounding of one arc tangent in degrees.
    expect(angles[0]).toBeCloseTo(acute, 12);
    expect(angles[1]).toBeCloseTo(90 - acute, 12);
    expect(angles[2]).toBeCloseTo(90, 12);
    expect(areaOf(mesh, 0)).toBe(600);
    const quality = meshQuality(mesh);
    expect(quality).toMatchObject({ nodes: 4, triangles: 2, area: 1200, smallestArea: 600 });
    expect([quality.shortestEdge, quality.meanEdge, quality.longestEdge]).toEqual([30, 40, 50]);
    expect(smallestAngleOf(mesh)).toBeCloseTo(quality.smallestAngle, 12);
  });

  it('M13: a triangle turned over has a negative area', () => {
    const turned = { ...mesh, triangles: Uint32Array.from([0, 2, 1]) };
    expect(meshQuality(turned).smallestArea).toBe(-600);
  });
});
