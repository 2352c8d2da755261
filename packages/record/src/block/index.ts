export { askBlocking, askBlockingWith, USUAL_MAT, USUAL_STOCK } from '../ask/ask-blocking.ts';
export { askBlock, type BlockChoices } from './ask-block.ts';
