/** The part of jStat (tests only) that the checks use; the package has no types of its own. */
declare module 'jstat' {
  type Matrix = number[][];
  interface Continuous {
    cdf(x: number, ...parameters: number[]): number;
    inv(p: number, ...parameters: number[]): number;
  }
  export const jStat: {
    normal: Continuous;
    beta: Continuous;
    quantiles(sample: readonly number[], levels: readonly number[], a: number, b: number): number[];
    transpose(a: Matrix): Matrix;
    multiply(a: Matrix, b: Matrix): Matrix;
    add(a: Matrix, b: Matrix): Matrix;
    identity(n: number): Matrix;
    inv(a: Matrix): Matrix;
  };
}
