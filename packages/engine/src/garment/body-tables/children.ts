import { type BodyTable, bodyRow, inches, QUOTED, REMEMBERED } from './body-table.ts';

/** Children 2 to 8 and youths 10 to 16, by clothing size. */
export const CHILDREN: BodyTable = {
  id: 'children',
  name: 'Children and youths, 2 to 16',
  group: 'child',
  sizes: ['2', '4', '6', '8', '10', '12', '14', '16'],
  rows: [
    bodyRow('chest', inches(21, 23, 25, 26.5, 28, 30, 31.5, 32.5), REMEMBERED),
    bodyRow('waist', inches(21, 21.5, 22.5, 23.5, 24.5, 25.5, 26.5, 27.5), REMEMBERED),
    bodyRow('hip', inches(22, 23.5, 25, 28, 29.5, 31.5, 33, 35.5), REMEMBERED),
    bodyRow('upper-arm', inches(7, 7.5, 8, 8.5, 8.75, 9, 9.25, 9.5), QUOTED),
    bodyRow('cross-back', inches(9.25, 9.75, 10.25, 10.75, 11.25, 12, 12.25, 13), QUOTED),
    bodyRow('back-length', inches(8.5, 9.5, 10.5, 12.5, 14, 15, 15.5, 16), QUOTED),
    bodyRow('arm-length', inches(8.5, 10.5, 11.5, 12.5, 13.5, 15, 16, 16.5), QUOTED),
    bodyRow('armhole-depth', inches(4.25, 4.75, 5, 5.5, 6, 6.5, 7, 7.5), QUOTED),
    bodyRow('neck-to-wrist', inches(18, 19.5, 20.5, 22, 24, 26, 27, 28), REMEMBERED),
  ],
  note: 'Craft council sizes. Back, arms and armholes were read in a quotation of the table; chest, waist, hips and neck to wrist are from memory.',
};
