export { askRoutes } from './ask-routes.ts';
export { routesAssumed } from './usual.ts';
