import * as Y from 'yjs';

/** From which number up to which, this one excluded, of one writer. */
type Stretch = readonly [from: number, to: number];

/**
 * The state of a document as it was read, as one update. Edits wait in it for those they follow. Where these
 * were lost they would wait for ever, and everything typed after the loss with them: what is missing is entered
 * as deleted, which lets in all that does not hang on the very thing that was lost. Only for a document as
 * read from a device, where nobody else may still bring what is missing.
 */
export const stateWithoutGaps = (doc: Y.Doc): Uint8Array => {
  const state = Y.encodeStateAsUpdate(doc);
  if (doc.store.pendingStructs === null) return state;
  try {
    closeGaps(doc, doc.store.pendingStructs.update);
    return Y.encodeStateAsUpdate(doc);
  } catch {
    return state;
  }
};

const closeGaps = (doc: Y.Doc, waiting: Uint8Array): void => {
  const { structs } = Y.decodeUpdateV2(waiting);
  for (const [client, gaps] of gapsBetween(doc, structs))
    for (const [from, to] of gaps) Y.applyUpdate(doc, deletedUpdate(client, from, to - from));
};

type Struct = ReturnType<typeof Y.decodeUpdateV2>['structs'][number];

const gapsBetween = (doc: Y.Doc, structs: readonly Struct[]): Map<number, Stretch[]> => {
  const there = new Map<number, Stretch[]>();
  const needed = new Map<number, number>();
  const need = (client: number, to: number): void =>
    void needed.set(client, Math.max(needed.get(client) ?? 0, to));
  for (const struct of structs) {
    if (struct instanceof Y.Skip) continue;
    const { client, clock } = struct.id;
    there.set(client, [...(there.get(client) ?? []), [clock, clock + struct.length]]);
    need(client, clock);
    for (const id of follows(struct)) need(id.client, id.clock + 1);
  }
  return new Map(
    [...needed].map(([client, to]) => [
      client,
      gapsOf([[0, Y.getState(doc.store, client)], ...(there.get(client) ?? [])], to),
    ]),
  );
};

/** What an edit stands beside or in. */
const follows = (struct: Struct): readonly Y.ID[] =>
  struct instanceof Y.Item
    ? [struct.origin, struct.rightOrigin, struct.parent].filter((each) => each instanceof Y.ID)
    : [];

/** What `there` leaves open of everything below `to`. */
const gapsOf = (there: readonly Stretch[], to: number): Stretch[] => {
  const gaps: Stretch[] = [];
  let at = 0;
  for (const [from, end] of [...there, [to, to] as const].sort(([a], [b]) => a - b)) {
    if (from > at && at < to) gaps.push([at, Math.min(from, to)]);
    at = Math.max(at, end);
  }
  return gaps;
};

/** An update, in the first format of Yjs, that enters so many edits of a writer as deleted. */
const deletedUpdate = (client: number, clock: number, length: number): Uint8Array =>
  // One writer, one struct, whose, from where; the sign of a deleted one, how long; no deletions.
  new Uint8Array([1, 1, ...numeral(client), ...numeral(clock), 0, ...numeral(length), 0]);

/** A whole number, seven bits a byte, the lowest first; beyond 32 bits too, where shifts would break it. */
const numeral = (value: number): number[] =>
  value < 128 ? [value] : [(value % 128) + 128, ...numeral(Math.floor(value / 128))];
