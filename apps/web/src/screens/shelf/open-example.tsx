import type { GarmentRecord } from '@dryflat/record';
import { useEffect } from 'react';
import { garmentHash, SHELF } from '../../shell/hash.ts';
import { Loading } from '../../shell/loading.tsx';
import { openShelf, shelve, shelveCopy } from '../../store/index.ts';

/** Opens an example that the address names, or the shelf where there is none of that name. */
const OpenExample = ({ slug }: { slug: string }) => {
  useEffect(() => {
    void arrive(slug);
  }, [slug]);
  return <Loading />;
};
export default OpenExample;

/** Effects may run twice; an example is put on the shelf once. */
const arriving = new Map<string, Promise<string>>();

const arrive = async (slug: string): Promise<void> => {
  const there = arriving.get(slug) ?? exampleAddress(slug);
  arriving.set(slug, there);
  const hash = await there;
  arriving.delete(slug);
  // Replaced, so that going back does not lead here again.
  location.replace(hash);
};

const exampleAddress = async (slug: string): Promise<string> => {
  const { findExample } = await import('@dryflat/record/examples');
  const example = findExample(slug);
  return example === undefined ? SHELF : garmentHash(await onShelf(example.record, example.title));
};

/** The id of the example on the shelf: the one that is there already, else a new one. */
const onShelf = async (record: GarmentRecord, title: string): Promise<string> => {
  const entry = (await openShelf()).entries().find(({ id }) => id === record.id);
  if (entry !== undefined && entry.trashed === undefined) return entry.id;
  if (entry !== undefined) return shelveCopy(record, title);
  return shelve(record);
};
