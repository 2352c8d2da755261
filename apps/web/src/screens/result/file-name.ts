/** A file's name from the garment's: `ferry-socks-pace.ics`. */
export const fileName = (garment: string, what: string): string =>
  `${
    garment
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '') || 'garment'
  }-${what}`;
