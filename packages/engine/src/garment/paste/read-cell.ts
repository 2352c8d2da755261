import { type Fault, type Millimetres, parseLength, type Result } from '../../units/index.ts';
import type { PlacedValue } from './draft.ts';
import type { Reading } from './reading.ts';
import { spanOf } from './source.ts';
import type { PrintedUnit, SizeCell, TextSpan } from './types.ts';

function lengths(value: PlacedValue, unit: PrintedUnit, field: string): Result<Millimetres[]> {
  const found: Millimetres[] = [];
  for (const text of [value.low, value.high]) {
    if (text === null) continue;
    const length = parseLength(text, { field, unit });
    if (!length.ok) return length;
    found.push(length.value.value);
  }
  return { ok: true, value: found };
}

const placeOf = (value: PlacedValue): TextSpan => spanOf(value.source, value.start, value.end);

/** A cell without a number: a dash, or one whose unit is not known. */
function bareCell(value: PlacedValue, reading: Reading): SizeCell {
  const from = placeOf(value);
  return { mm: null, range: null, text: reading.text.slice(...from), from };
}

/** Reads one value; a number that cannot be read is refused in its place and leaves an empty cell. */
export function readCell(
  value: PlacedValue,
  unit: PrintedUnit | null,
  field: string,
  reading: Reading,
): SizeCell {
  const cell = bareCell(value, reading);
  const result = unit === null ? null : lengths(value, unit, field);
  if (result && !result.ok) {
    reading.refuse(cell.from, result.faults[0] as Fault);
    return cell;
  }
  reading.mark({ from: cell.from, as: 'value' });
  const [low, high] = result?.value ?? [];
  if (low === undefined) return cell;
  return high === undefined ? { ...cell, mm: low } : { ...cell, range: [low, high] };
}
