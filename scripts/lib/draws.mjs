// @ts-check

/** Set to `large` by `npm run deep`. */
export const DRAWS = 'DRYFLAT_DRAWS';

/**
 * What a test draws, or how many: as few as find what goes wrong, in `npm test`; many more in `npm run deep`.
 * @template T
 * @param {T} few
 * @param {T} many
 * @returns {T}
 */
export const draws = (few, many) => (process.env[DRAWS] === 'large' ? many : few);

/**
 * Three standard errors of a share that is counted in so many independent trials (binomial).
 * @param {number} share
 * @param {number} trials
 */
export const chanceError = (share, trials) => 3 * Math.sqrt((share * (1 - share)) / trials);
