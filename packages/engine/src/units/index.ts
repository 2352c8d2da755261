export * from './brands.ts';
export * from './fault.ts';
