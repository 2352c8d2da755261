import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import Negotiator from 'negotiator';

/** Best first: brotli packs the app tighter than gzip. */
const CODINGS = ['br', 'gzip'] as const;
export type Coding = (typeof CODINGS)[number];

const CODERS: Readonly<Record<Coding, (bytes: Uint8Array) => Promise<Uint8Array>>> = {
  // 5 of 11: above it, packing takes many times longer, and the first visit waits for it.
  br: (bytes) =>
    promisify(brotliCompress)(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } }),
  gzip: promisify(gzip),
};

/** Pictures and fonts are packed already. */
const IS_TEXT = /^text\/|[/+](javascript|json|xml)\b/;

/** One packet holds it, packed or not. */
const SMALL = 1024;

export interface FileVersion {
  readonly path: string;
  /** Changes with the file. */
  readonly version: string;
  /** As in Content-Type. */
  readonly type: string;
  readonly bytes: Uint8Array;
}

/**
 * The coding to send a file in, of those that an Accept-Encoding header takes; null for none.
 * One with `q=0` is not taken.
 */
export const codingFor = (
  accepted: string | readonly string[] | undefined,
  { type, bytes }: FileVersion,
): Coding | null => {
  if (bytes.length < SMALL || !IS_TEXT.test(type)) return null;
  const taken = new Negotiator({ headers: { 'accept-encoding': accepted } }).encodings(CODINGS);
  return CODINGS.find((coding) => taken.includes(coding)) ?? null;
};

/** Packs files, each once for every version of it. */
export const packing = () => {
  const kept = new Map<string, { version: string; packed: Promise<Uint8Array> }>();
  return ({ path, version, bytes }: FileVersion, coding: Coding): Promise<Uint8Array> => {
    const key = `${coding} ${path}`;
    const before = kept.get(key);
    if (before?.version === version) return before.packed;
    const packed = CODERS[coding](bytes);
    kept.set(key, { version, packed });
    return packed;
  };
};
