import type { OutgoingHttpHeaders } from 'node:http';

/**
 * What is sent back, beside the headers that every answer carries. It is whole before any of it is
 * sent, so that whatever fails on the way can still be told.
 */
export interface Answer {
  readonly status: number;
  readonly headers: OutgoingHttpHeaders;
  readonly body: string | Uint8Array;
}

const WHY: Readonly<Record<number, string>> = {
  400: 'The request cannot be read.',
  404: 'There is no such file.',
  405: 'Only GET and HEAD are answered here.',
  408: 'The request did not come to its end in time.',
  412: 'The file is another one than the request wants.',
  413: 'The request is too large.',
  416: 'The file ends before the range that was asked for.',
  431: 'The request is too long.',
  500: 'The file could not be read. Load the page again; if it stays so, end npm start and run it again.',
};

export const refusal = (
  status: number,
  { why = WHY[status] ?? '', headers = {} }: { why?: string; headers?: OutgoingHttpHeaders } = {},
): Answer => ({
  status,
  headers: {
    'Content-Type': 'text/plain; charset=utf-8',
    'Cache-Control': 'no-store',
    ...headers,
  },
  body: `${why}\n`,
});
