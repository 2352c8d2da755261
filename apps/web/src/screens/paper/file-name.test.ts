import { expect, test } from 'vitest';
import { fileNameOf } from './file-name.ts';

test('PP2: a file is named after the garment in letters and numbers that every system takes', () => {
  expect(fileNameOf('Ledger Day waistcoat, for Emlen!', 'mat')).toBe(
    'ledger-day-waistcoat-for-emlen-mat',
  );
  expect(fileNameOf('../Føtter & tær/2', 'report')).toBe('føtter-tær-2-report');
  expect(fileNameOf(' … ', 'blank')).toBe('garment-blank');
});
