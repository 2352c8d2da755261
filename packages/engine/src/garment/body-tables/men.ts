import { type BodyTable, bodyRow, inches, REMEMBERED } from './body-table.ts';

/** Men, S to XXL; all remembered. */
export const MEN: BodyTable = {
  id: 'men',
  name: 'Men, S to XXL',
  group: 'man',
  sizes: ['S', 'M', 'L', 'XL', 'XXL'],
  rows: [
    bodyRow('chest', inches([34, 36], [38, 40], [42, 44], [46, 48], [50, 52]), REMEMBERED),
    bodyRow('waist', inches([28, 30], [32, 34], [36, 38], [42, 44], [46, 48]), REMEMBERED),
    bodyRow('hip', inches([35, 37], [39, 41], [43, 45], [47, 49], [51, 53]), REMEMBERED),
    bodyRow('upper-arm', inches(12, 13, 15, 16, 17), REMEMBERED),
    bodyRow(
      'cross-back',
      inches([15.5, 16], [16.5, 17], [17.5, 18], [18, 18.5], [18.5, 19]),
      REMEMBERED,
    ),
    bodyRow(
      'back-hip-length',
      inches([25, 25.5], [26.5, 26.75], [27, 27.25], [27.5, 27.75], [28, 28.5]),
      REMEMBERED,
    ),
    bodyRow('arm-length', inches(18, 18.5, 19.5, 20, 20.5), REMEMBERED),
    bodyRow(
      'armhole-depth',
      inches([8.5, 9], [9, 9.5], [9.5, 10], [10, 10.5], [10.5, 11]),
      REMEMBERED,
    ),
    bodyRow(
      'neck-to-wrist',
      inches([32, 32.5], [33, 33.5], [34, 34.5], [35, 35.5], [36, 36.5]),
      REMEMBERED,
    ),
  ],
  note: 'Craft council sizes, from memory: every row may be off by half an inch or more. Measure the body where you can.',
};
