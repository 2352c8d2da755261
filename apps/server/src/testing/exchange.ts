import { connect } from 'node:net';

/** What came back on a connection, and how it ended. */
export interface Exchange {
  readonly text: string;
  /** `hung` where the server had neither answered nor ended the connection within the limit. */
  readonly end: 'closed' | 'reset' | 'hung';
}

export interface Sending {
  readonly port: number;
  /** As it stands on the wire, one character a byte: fetch would tidy it before sending it. */
  readonly text: string;
  /** What the client does when it is sent; `listen` waits for the server to close the connection. */
  readonly after?: 'listen' | 'half-close' | 'leave';
}

/** The server answers in milliseconds; a busy machine is not taken for a hang. */
const LIMIT_MS = 10_000;

export const exchange = ({ port, text, after = 'listen' }: Sending): Promise<Exchange> =>
  new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1');
    const chunks: Buffer[] = [];
    const done = (end: Exchange['end']) => {
      clearTimeout(timer);
      socket.destroy();
      resolve({ text: Buffer.concat(chunks).toString('latin1'), end });
    };
    const timer = setTimeout(() => done('hung'), LIMIT_MS);
    socket.on('data', (chunk) => chunks.push(chunk));
    socket.on('close', () => done('closed'));
    socket.on('error', () => done('reset'));
    socket.write(text, 'latin1', () => {
      if (after === 'leave') done('closed');
      if (after === 'half-close') socket.end();
    });
  });
