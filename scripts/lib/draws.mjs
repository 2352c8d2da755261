// @ts-check

/** Set to `large` by `npm run deep`. */
export const DRAWS = 'DRYFLAT_DRAWS';

/**
 * How many a test draws: as few as find what goes wrong, in `npm test`; many more in `npm run deep`.
 * @param {number} few
 * @param {number} many
 */
export const draws = (few, many) => (process.env[DRAWS] === 'large' ? many : few);

/**
 * Three standard errors of a share that is counted in so many independent trials (binomial).
 * @param {number} share
 * @param {number} trials
 */
export const chanceError = (share, trials) => 3 * Math.sqrt((share * (1 - share)) / trials);
