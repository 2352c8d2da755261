/** One way in which the sample goes wrong, and everything that is said of it. */
export interface MalformedCase {
  readonly title: string;
  /** Where the sample is changed. */
  readonly path: string;
  /** What is put there; undefined takes away what was there. */
  readonly value: unknown;
  /** Every message, whole and in order. */
  readonly says: readonly string[];
}
