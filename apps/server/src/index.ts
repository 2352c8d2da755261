export { type Loopback, type ServeOptions, type Serving, serve } from './serve.ts';
