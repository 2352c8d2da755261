/**
 * Linear density of yarn. tex is grams per 1000 m. English cotton count Ne is hanks of 840 yd per
 * pound. All positive; anything else throws a RangeError.
 */
const positive = (value: number): number => {
  if (!(value > 0 && Number.isFinite(value)))
    throw new RangeError(`not a positive value: ${value}`);
  return value;
};

export const texOfMetresPer100g = (metresPer100g: number): number =>
  100_000 / positive(metresPer100g);

export const metresPer100gOfTex = (tex: number): number => 100_000 / positive(tex);

/** 453.59237 g to the pound over 840 yd of 0.9144 m, so tex · Ne = 590.54. */
const TEX_TIMES_NE = (453.59237 / (840 * 0.9144)) * 1000;

export const texOfCottonCount = (ne: number): number => TEX_TIMES_NE / positive(ne);
