import { REFERENCES, type Reference } from '@dryflat/engine/textile';

const STANDING: Readonly<Record<Reference['standing'], string>> = {
  read: '',
  'read-second-hand': ', quoted by others',
  'from-memory': ', from memory',
  data: ', computed from its data',
};

/** `Munden 1959, J. Text. Inst. 50, T448`; a key that is not in the list is shown as it is. */
export const cite = (key: string): string => {
  const found = (REFERENCES as Readonly<Record<string, Reference>>)[key];
  if (found === undefined) return key;
  return `${found.authors} ${found.year}, ${found.where}${STANDING[found.standing]}`;
};
