import { isPlaceName, type PlaceName } from './place-names.ts';

export type Route =
  | { readonly at: 'shelf' }
  | { readonly at: 'settings' }
  | { readonly at: 'example'; readonly slug: string }
  | { readonly at: 'garment'; readonly id: string; readonly place: PlaceName };

export const SHELF = '#/';
export const SETTINGS = '#/settings';

/** Address that opens an example, as `npm start` prints one. */
export const exampleHash = (slug: string): string => `#/example/${slug}`;

/** Address of a place of a garment. */
export const garmentHash = (id: string, place: PlaceName = 'forecast'): string =>
  `#/garment/${encodeURIComponent(id)}/${place}`;

/** Reads an address; one that leads nowhere leads to the shelf, an unknown place to the forecast. */
export const parseHash = (hash: string): Route => {
  const [, at = '', id = '', place = ''] = hash.replace(/^#/, '').split('/');
  if (at === 'settings') return { at: 'settings' };
  if (at === 'example' && id !== '') return { at: 'example', slug: id };
  if (at !== 'garment' || id === '') return { at: 'shelf' };
  const known = decode(id);
  if (known === null) return { at: 'shelf' };
  return { at: 'garment', id: known, place: isPlaceName(place) ? place : 'forecast' };
};

const decode = (text: string): string | null => {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
};
