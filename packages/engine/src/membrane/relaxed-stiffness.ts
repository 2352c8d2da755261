import { G1, G2, G3, H11, H12, H13, H22, H23, H33 } from './material.ts';
import { solveSymmetric, withoutNegative } from './two-by-two.ts';

const solved = new Float64Array(2);
const bend = new Float64Array(3);

/** ∂²W_r/∂C² = H − H(H + K)⁻¹H = K − K(H + K)⁻¹K for a slack sheet, K = ¼ρ diag(1, 1, 2). */
export const softenAll = (out: Float64Array, resistance: number): void => {
  const k = resistance / 4;
  const [h11, h22] = [out[H11]! + k, out[H22]! + k];
  const h12 = out[H12]!;
  solveSymmetric(h11, h22, h12, k, 0, solved);
  out[H11] = k - k * solved[0]!;
  out[H12] = -k * solved[1]!;
  solveSymmetric(h11, h22, h12, 0, k, solved);
  out[H22] = k - k * solved[1]!;
  out[H33] = 2 * k - (4 * k * k) / (out[H33]! + 2 * k);
};

/**
 * M = Jᵀ(∂²W/∂C²)J + S + ½ρ(|z|² + 2z zᵀ) as M₁₁, M₂₂, M₁₂ into `into`: curvature of the energy by z,
 * with J = ∂(z zᵀ)/∂z.
 */
export const curvature = (
  out: Float64Array,
  z1: number,
  z2: number,
  resistance: number,
  into: Float64Array,
): void => {
  const [a, b, r] = [z1 * z1, z2 * z2, resistance / 2];
  into[0] = 4 * a * out[H11]! + b * out[H33]! + 2 * out[G1]! + r * (3 * a + b);
  into[1] = 4 * b * out[H22]! + a * out[H33]! + 2 * out[G2]! + r * (a + 3 * b);
  into[2] = z1 * z2 * (4 * out[H12]! + out[H33]! + 2 * r) + out[G3]!;
};

/** Leaves out curvature below 0, which only a W that is not convex has. */
export const clampConvex = (out: Float64Array): void => {
  if (out[H11]! >= 0 && out[H22]! >= 0 && out[H11]! * out[H22]! >= out[H12]! ** 2) return;
  const [h11, h22, h12] = withoutNegative(out[H11]!, out[H22]!, out[H12]!);
  out[H11] = h11;
  out[H22] = h22;
  out[H12] = h12;
};

/** ∂²W_r/∂C² = H − HJ M⁻¹ JᵀH, by the implicit function theorem from Sz = 0. */
export const softenAcross = (
  out: Float64Array,
  z1: number,
  z2: number,
  resistance: number,
): void => {
  clampConvex(out);
  curvature(out, z1, z2, resistance, bend);
  const [m11, m22, m12] = [bend[0]!, bend[1]!, bend[2]!];
  const [h11, h22, h33, h12] = [out[H11]!, out[H22]!, out[H33]!, out[H12]!];
  // Columns of JᵀH.
  const [p1, p2, p3] = [2 * z1 * h11, 2 * z1 * h12, z2 * h33];
  const [q1, q2, q3] = [2 * z2 * h12, 2 * z2 * h22, z1 * h33];
  solveSymmetric(m11, m22, m12, p1, q1, solved);
  out[H11]! -= p1 * solved[0]! + q1 * solved[1]!;
  out[H12]! -= p2 * solved[0]! + q2 * solved[1]!;
  out[H13]! -= p3 * solved[0]! + q3 * solved[1]!;
  solveSymmetric(m11, m22, m12, p2, q2, solved);
  out[H22]! -= p2 * solved[0]! + q2 * solved[1]!;
  out[H23]! -= p3 * solved[0]! + q3 * solved[1]!;
  solveSymmetric(m11, m22, m12, p3, q3, solved);
  out[H33]! -= p3 * solved[0]! + q3 * solved[1]!;
};
