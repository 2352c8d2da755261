export * from './layout.ts';
export * from './outline.ts';
export {
  type Box,
  boxOf,
  distance,
  flattenPath,
  joinBoxes,
  pathLength,
  pathToSvg,
} from './path.ts';
export type * from './types.ts';
