import { FACE_FILES, type Faces, facesFrom } from '@dryflat/paper';
import { FACE_ADDRESSES } from './face-addresses.ts';

const bytesAt = async (address: string): Promise<Uint8Array> => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`the letters at ${address} could not be loaded`);
  return new Uint8Array(await answer.arrayBuffer());
};

const load = async (): Promise<Faces> => {
  const files = FACE_FILES.map(
    async ({ name }) => [name, await bytesAt(FACE_ADDRESSES[name])] as const,
  );
  return facesFrom(new Map(await Promise.all(files)));
};

let loading: Promise<Faces> | null = null;

/** The letters of all pages, loaded once; a failure is tried again at the next asking. */
export const loadFaces = (): Promise<Faces> => {
  loading ??= load().catch((error: unknown) => {
    loading = null;
    throw error;
  });
  return loading;
};
