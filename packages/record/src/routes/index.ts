export { askRoutes, planFrom } from './ask-routes.ts';
export { routesAssumed, USUAL_PACE, USUAL_WEIGHTS } from './usual.ts';
