/** Bytes `from` to `to` of a file, both included, counted from 0. */
export interface ByteRange {
  readonly from: number;
  readonly to: number;
}

/**
 * What a Range header asks of a file of `size` bytes: one range of it, the whole, or a part that is
 * past its end (`'none'`, to be answered with 416).
 *
 * RFC 9110, section 14.1.2 for the two forms; 14.2 for the rest: a server may ignore a Range header,
 * and does here where it is no single range of bytes or where its end is before its beginning.
 */
export const rangeOf = (header: string | undefined, size: number): ByteRange | 'whole' | 'none' => {
  const [, first = '', last = ''] = /^bytes=(\d*)-(\d*)$/i.exec(header ?? '') ?? [];
  if (first === '' && last === '') return 'whole';
  if (first !== '' && last !== '' && Number(last) < Number(first)) return 'whole';
  const from = first === '' ? Math.max(0, size - Number(last)) : Number(first);
  if (from >= size) return 'none';
  return { from, to: first === '' || last === '' ? size - 1 : Math.min(Number(last), size - 1) };
};
