export * from './fibre-names.ts';
