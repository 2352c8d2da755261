import { type BodyTable, bodyRow, inches, REMEMBERED } from './body-table.ts';

/** Babies, by months; all remembered. */
export const BABIES: BodyTable = {
  id: 'babies',
  name: 'Babies, 3 to 24 months',
  group: 'baby',
  sizes: ['3 months', '6 months', '12 months', '18 months', '24 months'],
  rows: [
    bodyRow('chest', inches(16, 17, 18, 19, 20), REMEMBERED),
    bodyRow('waist', inches(18, 19, 20, 20.5, 21), REMEMBERED),
    bodyRow('hip', inches(19, 20, 20, 21, 22), REMEMBERED),
    bodyRow('upper-arm', inches(5.5, 6, 6.5, 7, 7.5), REMEMBERED),
    bodyRow('cross-back', inches(7.25, 7.75, 8.25, 8.5, 8.75), REMEMBERED),
    bodyRow('back-length', inches(6, 7, 7.5, 8, 8.5), REMEMBERED),
    bodyRow('arm-length', inches(6, 6.5, 7.5, 8, 8.5), REMEMBERED),
    bodyRow('armhole-depth', inches(3.25, 3.5, 3.75, 4, 4.25), REMEMBERED),
    bodyRow('neck-to-wrist', inches(10.5, 11.5, 12.5, 14, 18), REMEMBERED),
  ],
  note: 'Craft council sizes, from memory: every row may be off by half an inch or more.',
};
