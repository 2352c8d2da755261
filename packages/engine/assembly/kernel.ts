// Inner loops of the sparse LDLᵀ solver, in AssemblyScript. Built by `npm run kernel` into
// src/membrane/sparse/kernel-bytes.ts. Each function does what its twin in plain-scalar.ts and
// plain-pairs.ts does, in the same order, so that results agree to the last bit: there is no fused
// multiply-add in WebAssembly, and each lane of a vector is rounded as a single number is.
// Arguments named after arrays are addresses in bytes; the caller lays out the memory. Integers take
// 4 bytes, numbers 8.

function int(array: usize, index: i32): i32 {
  return load<i32>(array + ((<usize>index) << 2));
}

function num(array: usize, index: i32): f64 {
  return load<f64>(array + ((<usize>index) << 3));
}

function setNum(array: usize, index: i32, value: f64): void {
  store<f64>(array + ((<usize>index) << 3), value);
}

function usable(pivot: f64): bool {
  return pivot !== 0 && pivot - pivot === 0;
}

/** First address that the program itself does not use. */
export function firstFree(): usize {
  return __heap_base;
}

/** Zeroes the matrix, puts each value in its slot and adds the shift to the diagonal. */
export function loadValues(
  count: i32,
  block: i32,
  entries: i32,
  values: usize,
  slot: usize,
  matrix: usize,
  matrixLength: i32,
  shift: f64,
): void {
  memory.fill(matrix, 0, (<usize>matrixLength) << 3);
  for (let p = 0; p < entries; p++) setNum(matrix, int(slot, p), num(values, p));
  for (let k = 0; k < count; k++)
    for (let a = 0; a < block; a++) {
      const at = block * block * k + (block + 1) * a;
      setNum(matrix, at, num(matrix, at) + shift);
    }
}

/** Rows of one unknown each. `work` is zero and `filled` a copy of `colPtr`. */
export function factorScalar(
  count: i32,
  matrix: usize,
  start: usize,
  place: usize,
  rowPtr: usize,
  rowCol: usize,
  colPtr: usize,
  rowIdx: usize,
  filled: usize,
  lower: usize,
  pivots: usize,
  work: usize,
): i32 {
  for (let k = 0; k < count; k++) {
    for (let p = int(start, k); p < int(start, k + 1); p++)
      setNum(work, int(place, p), num(matrix, count + p));
    let pivot = num(matrix, k);
    const rowEnd = int(rowPtr, k + 1);
    for (let q = int(rowPtr, k); q < rowEnd; q++) {
      const i = int(rowCol, q);
      const y = num(work, i);
      setNum(work, i, 0);
      const end = int(filled, i);
      for (let p = int(colPtr, i); p < end; p++) {
        const j = int(rowIdx, p);
        setNum(work, j, num(work, j) - num(lower, p) * y);
      }
      const l = y / num(pivots, i);
      pivot -= l * y;
      setNum(lower, end, l);
      store<i32>(filled + ((<usize>i) << 2), end + 1);
    }
    setNum(pivots, k, pivot);
    if (!usable(pivot)) return k;
  }
  return count;
}

/** Rows of two unknowns each, two numbers at a time. */
export function factorPairs(
  count: i32,
  matrix: usize,
  start: usize,
  place: usize,
  rowPtr: usize,
  rowCol: usize,
  colPtr: usize,
  rowIdx: usize,
  filled: usize,
  lower: usize,
  pivots: usize,
  work: usize,
  inner: usize,
): i32 {
  const blocks = matrix + ((<usize>count) << 5);
  for (let k = 0; k < count; k++) {
    for (let p = int(start, k); p < int(start, k + 1); p++) {
      const from = blocks + ((<usize>p) << 5);
      const to = work + ((<usize>int(place, p)) << 5);
      v128.store(to, v128.load(from));
      v128.store(to, v128.load(from, 16), 16);
    }
    let d00 = num(matrix, 4 * k);
    let d01 = num(matrix, 4 * k + 2);
    let d11 = num(matrix, 4 * k + 3);
    const rowEnd = int(rowPtr, k + 1);
    for (let q = int(rowPtr, k); q < rowEnd; q++) {
      const i = int(rowCol, q);
      const w = work + ((<usize>i) << 5);
      const e = num(inner, i);
      const y00 = load<f64>(w);
      const y01 = load<f64>(w, 8) - e * y00;
      const y10 = load<f64>(w, 16);
      const y11 = load<f64>(w, 24) - e * y10;
      v128.store(w, f64x2.splat(0));
      v128.store(w, f64x2.splat(0), 16);
      const v00 = f64x2.splat(y00);
      const v01 = f64x2.splat(y01);
      const v10 = f64x2.splat(y10);
      const v11 = f64x2.splat(y11);
      const first = int(colPtr, i);
      const end = int(filled, i);
      let index = rowIdx + ((<usize>first) << 2);
      let l = lower + ((<usize>first) << 5);
      const stop = lower + ((<usize>end) << 5);
      while (l < stop) {
        const j = work + ((<usize>load<i32>(index)) << 5);
        const l0 = v128.load(l);
        const l1 = v128.load(l, 16);
        v128.store(j, f64x2.sub(f64x2.sub(v128.load(j), f64x2.mul(l0, v00)), f64x2.mul(l1, v01)));
        v128.store(
          j,
          f64x2.sub(f64x2.sub(v128.load(j, 16), f64x2.mul(l0, v10)), f64x2.mul(l1, v11)),
          16,
        );
        index += 4;
        l += 32;
      }
      const p0 = num(pivots, 2 * i);
      const p1 = num(pivots, 2 * i + 1);
      const l00 = y00 / p0;
      const l10 = y10 / p0;
      const l01 = y01 / p1;
      const l11 = y11 / p1;
      store<f64>(stop, l00);
      store<f64>(stop, l10, 8);
      store<f64>(stop, l01, 16);
      store<f64>(stop, l11, 24);
      store<i32>(filled + ((<usize>i) << 2), end + 1);
      d00 = d00 - l00 * y00 - l01 * y01;
      d01 = d01 - l10 * y00 - l11 * y01;
      d11 = d11 - l10 * y10 - l11 * y11;
    }
    setNum(pivots, 2 * k, d00);
    if (!usable(d00)) return 2 * k;
    const e = d01 / d00;
    setNum(inner, k, e);
    const d = d11 - e * d01;
    setNum(pivots, 2 * k + 1, d);
    if (!usable(d)) return 2 * k + 1;
  }
  return 2 * count;
}

/** L D Lᵀ x = x in place, one unknown a row. */
export function solveScalar(
  count: i32,
  colPtr: usize,
  rowIdx: usize,
  lower: usize,
  pivots: usize,
  x: usize,
): void {
  for (let i = 0; i < count; i++) {
    const xi = num(x, i);
    const end = int(colPtr, i + 1);
    for (let p = int(colPtr, i); p < end; p++) {
      const j = int(rowIdx, p);
      setNum(x, j, num(x, j) - num(lower, p) * xi);
    }
  }
  for (let i = 0; i < count; i++) setNum(x, i, num(x, i) / num(pivots, i));
  for (let i = count - 1; i >= 0; i--) {
    let sum = num(x, i);
    const end = int(colPtr, i + 1);
    for (let p = int(colPtr, i); p < end; p++) sum -= num(lower, p) * num(x, int(rowIdx, p));
    setNum(x, i, sum);
  }
}

/** L D Lᵀ x = x in place, two unknowns a row. */
export function solvePairs(
  count: i32,
  colPtr: usize,
  rowIdx: usize,
  lower: usize,
  pivots: usize,
  x: usize,
  inner: usize,
): void {
  for (let i = 0; i < count; i++) {
    const x0 = num(x, 2 * i);
    const x1 = num(x, 2 * i + 1) - num(inner, i) * x0;
    setNum(x, 2 * i + 1, x1);
    const v0 = f64x2.splat(x0);
    const v1 = f64x2.splat(x1);
    const end = int(colPtr, i + 1);
    for (let p = int(colPtr, i); p < end; p++) {
      const j = x + ((<usize>int(rowIdx, p)) << 4);
      const l = lower + ((<usize>p) << 5);
      v128.store(
        j,
        f64x2.sub(
          f64x2.sub(v128.load(j), f64x2.mul(v128.load(l), v0)),
          f64x2.mul(v128.load(l, 16), v1),
        ),
      );
    }
  }
  for (let i = 0; i < 2 * count; i++) setNum(x, i, num(x, i) / num(pivots, i));
  for (let i = count - 1; i >= 0; i--) {
    let x0 = num(x, 2 * i);
    let x1 = num(x, 2 * i + 1);
    const end = int(colPtr, i + 1);
    for (let p = int(colPtr, i); p < end; p++) {
      const j = x + ((<usize>int(rowIdx, p)) << 4);
      const l = lower + ((<usize>p) << 5);
      const j0 = load<f64>(j);
      const j1 = load<f64>(j, 8);
      x0 = x0 - load<f64>(l) * j0 - load<f64>(l, 8) * j1;
      x1 = x1 - load<f64>(l, 16) * j0 - load<f64>(l, 24) * j1;
    }
    setNum(x, 2 * i + 1, x1);
    setNum(x, 2 * i, x0 - num(inner, i) * x1);
  }
}

/** r = b − A x, one unknown a row. */
export function residualScalar(
  count: i32,
  matrix: usize,
  start: usize,
  place: usize,
  b: usize,
  x: usize,
  r: usize,
): void {
  for (let k = 0; k < count; k++) {
    const xk = num(x, k);
    let sum = num(b, k) - num(matrix, k) * xk;
    for (let p = int(start, k); p < int(start, k + 1); p++) {
      const i = int(place, p);
      const a = num(matrix, count + p);
      sum -= a * num(x, i);
      setNum(r, i, num(r, i) - a * xk);
    }
    setNum(r, k, sum);
  }
}

/** r = b − A x, two unknowns a row. */
export function residualPairs(
  count: i32,
  matrix: usize,
  start: usize,
  place: usize,
  b: usize,
  x: usize,
  r: usize,
): void {
  for (let k = 0; k < count; k++) {
    const x0 = num(x, 2 * k);
    const x1 = num(x, 2 * k + 1);
    let r0 = num(b, 2 * k) - num(matrix, 4 * k) * x0 - num(matrix, 4 * k + 2) * x1;
    let r1 = num(b, 2 * k + 1) - num(matrix, 4 * k + 2) * x0 - num(matrix, 4 * k + 3) * x1;
    for (let p = int(start, k); p < int(start, k + 1); p++) {
      const i = 2 * int(place, p);
      const at = 4 * (count + p);
      const a00 = num(matrix, at);
      const a01 = num(matrix, at + 1);
      const a10 = num(matrix, at + 2);
      const a11 = num(matrix, at + 3);
      r0 = r0 - a00 * num(x, i) - a01 * num(x, i + 1);
      r1 = r1 - a10 * num(x, i) - a11 * num(x, i + 1);
      setNum(r, i, num(r, i) - a00 * x0 - a10 * x1);
      setNum(r, i + 1, num(r, i + 1) - a01 * x0 - a11 * x1);
    }
    setNum(r, 2 * k, r0);
    setNum(r, 2 * k + 1, r1);
  }
}
