export { askDrying } from './ask-drying.ts';
