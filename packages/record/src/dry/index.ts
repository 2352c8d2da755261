export { askDrying } from './ask-drying.ts';
export { drawnFabricM2 } from './fabric-area.ts';
