export * from './evidence.ts';
export * from './garment.ts';
export * from './pattern.ts';
export * from './version.ts';
export * from './wearer.ts';
export * from './yarn.ts';
