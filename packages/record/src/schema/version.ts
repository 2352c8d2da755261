/** Kept apart from the schemas, so that a page can tell a version without loading them. */
export const CURRENT_VERSION = 4;
export const FORMAT = 'dryflat-garment';
