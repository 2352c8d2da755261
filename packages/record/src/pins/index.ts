export { finishFaults } from './finish-faults.ts';
export {
  pinsForEachWire,
  pinsIn,
  pinsMissing,
  pinsOut,
  pinsToCome,
  pinTotal,
} from './pin-counts.ts';
export { pinWords } from './pin-words.ts';
