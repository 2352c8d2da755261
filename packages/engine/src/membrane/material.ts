import type { Fault } from '../units/index.ts';
import type { TensionLaw } from './law.ts';

/**
 * An orthotropic sheet. Energy per area at rest, N·mm/mm², with material lines along 1 and 2:
 *
 *   W(C) = w₁(ε₁) + w₂(ε₂) + c ε₁ε₂ + ½ G C₁₂²,   ε_i = √C_ii − 1,   C = FᵀF
 *
 * so that C₁₂ = λ₁λ₂ sin γ for lines that meet at a right angle at rest and turned by γ.
 */
export interface Material {
  readonly along1: TensionLaw;
  readonly along2: TensionLaw;
  /** c, N/mm: above 0 a pull along one line draws the other in. */
  readonly coupling: number;
  /** G, N/mm, above 0. */
  readonly shear: number;
}

/** Where the parts of an evaluation stand: W, ∂W/∂C and ∂²W/∂C² by C₁₁, C₂₂, C₁₂. */
export const EVALUATED = 10;
export const [W, G1, G2, G3, H11, H22, H33, H12, H13, H23] = [
  0, 1, 2, 3, 4, 5, 6, 7, 8, 9,
] as const;

/**
 * Energy and its first and second derivatives by (C₁₁, C₂₂, C₁₂), C₁₂ once. The second Piola–Kirchhoff
 * stress is S₁₁ = 2 G1, S₂₂ = 2 G2, S₁₂ = G3. Where a law ends W is Infinity and the rest is not set.
 */
export const evaluate = (
  { along1, along2, coupling, shear }: Material,
  c11: number,
  c22: number,
  c12: number,
  out: Float64Array,
): void => {
  const l1 = Math.sqrt(c11);
  const l2 = Math.sqrt(c22);
  const e1 = l1 - 1;
  const e2 = l2 - 1;
  const energy = along1.energy(e1) + along2.energy(e2);
  if (!(c11 > 0 && c22 > 0 && Number.isFinite(energy))) {
    out[W] = Number.POSITIVE_INFINITY;
    return;
  }
  const s1 = along1.stress(e1) + coupling * e2;
  const s2 = along2.stress(e2) + coupling * e1;
  out[W] = energy + coupling * e1 * e2 + (shear * c12 * c12) / 2;
  out[G1] = s1 / (2 * l1);
  out[G2] = s2 / (2 * l2);
  out[G3] = shear * c12;
  out[H11] = (along1.stiffness(e1) - s1 / l1) / (4 * c11);
  out[H22] = (along2.stiffness(e2) - s2 / l2) / (4 * c22);
  out[H33] = shear;
  out[H12] = coupling / (4 * l1 * l2);
  out[H13] = 0;
  out[H23] = 0;
};

/** Mean stiffness at rest, N/mm: the scale of the sheet's forces. */
export const stiffnessScale = ({ along1, along2 }: Material): number =>
  Math.sqrt(along1.stiffness(0) * along2.stiffness(0));

const positive = (value: number): boolean => Number.isFinite(value) && value > 0;

/**
 * What is wrong with a material: stiffnesses at rest and G must be finite and above 0, limits above 0,
 * jams between −1 and 0, and c² < Y₁Y₂, without which the sheet has less energy stretched than at rest.
 */
export const materialFaults = (material: Material, field: string): Fault[] => {
  const { along1, along2, coupling, shear } = material;
  const faults: Fault[] = [];
  const put = (name: string, given: unknown, problem: string, mend: string) =>
    faults.push({
      code: 'material-unusable',
      field: `${field}.${name}`,
      given: String(given),
      problem,
      mend,
    });
  for (const [name, law] of [
    ['along1', along1],
    ['along2', along2],
  ] as const) {
    const [slope, jam] = [law.stiffness(0), law.jam ?? -0.5];
    if (!positive(slope))
      put(name, slope, 'A stiffness at rest is not above 0', 'Give a stiffness above 0 N/mm');
    if (!(law.limit > 0)) put(name, law.limit, 'A limit is not above 0', 'Give a limit above 0');
    if (!(jam > -1 && jam < 0))
      put(name, jam, 'A jam is not between −1 and 0', 'Give a strain between −1 and 0, or none');
  }
  if (!positive(shear))
    put('shear', shear, 'The shear stiffness is not above 0', 'Give a stiffness above 0 N/mm');
  if (!(coupling * coupling < along1.stiffness(0) * along2.stiffness(0)))
    put(
      'coupling',
      coupling,
      'The coupling is so strong that the sheet would stretch by itself',
      'Give one whose square is below the product of the two stiffnesses at rest',
    );
  return faults;
};
