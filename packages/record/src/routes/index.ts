export { knitSoFar } from '../knit/knit-so-far.ts';
export { isOfGarment, outlinePiecesOf, pieceNamed, pieceOf } from '../knit/piece-of.ts';
export { askRoutes, planFrom } from './ask-routes.ts';
export { routesAssumed, USUAL_PACE, USUAL_WEIGHTS } from './usual.ts';
