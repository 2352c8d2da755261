/** Key of the note that says which piece of a garment is open on this device. */
export const openNote = (garment: string): string => `pinning/${garment}`;
