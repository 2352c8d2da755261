import { type BodyTable, bodyRow, inches, REMEMBERED } from './body-table.ts';

/** Around the head, by age; remembered, one number each. */
export const HEADS: BodyTable = {
  id: 'heads',
  name: 'Heads, baby to man',
  group: 'anyone',
  sizes: ['Preterm baby', 'Baby', 'Toddler', 'Child', 'Woman', 'Man'],
  rows: [bodyRow('head', inches(12, 14, 16, 18, 20, 22), REMEMBERED)],
  note: 'Round numbers from memory; heads of one age differ by 2 in and more. Hats are worn an inch or two smaller than the head.',
};
