/**
 * Branded quantities. A length is a `Millimetres`, never a bare number; a width laid flat and a
 * girth around a body are different types, so that neither can be passed where the other is meant.
 */
declare const quantity: unique symbol;
declare const span: unique symbol;

type Quantity<Name extends string> = number & { readonly [quantity]: Name };

/** A length, in millimetres. */
export type Millimetres = Quantity<'mm'>;
/** A width measured across one layer of a piece laid flat, in millimetres. */
export type FlatMillimetres = Millimetres & { readonly [span]: 'flat' };
/** A girth measured all the way around, in millimetres. */
export type AroundMillimetres = Millimetres & { readonly [span]: 'around' };
/** A mass, in grams. */
export type Grams = Quantity<'g'>;
/** A length of yarn, in metres. */
export type Metres = Quantity<'m'>;
/** A temperature, in degrees Celsius. */
export type Celsius = Quantity<'degC'>;
/** A line load, in newton per millimetre of width. */
export type NewtonPerMillimetre = Quantity<'N/mm'>;

export const mm = (value: number): Millimetres => value as Millimetres;
export const flat = (value: number): FlatMillimetres => value as FlatMillimetres;
export const around = (value: number): AroundMillimetres => value as AroundMillimetres;
export const grams = (value: number): Grams => value as Grams;
export const metres = (value: number): Metres => value as Metres;
export const celsius = (value: number): Celsius => value as Celsius;
export const newtonPerMm = (value: number): NewtonPerMillimetre => value as NewtonPerMillimetre;

/** A piece seamed or knit in the round lies doubled: a girth is two flat widths. */
export const flatToAround = (width: FlatMillimetres): AroundMillimetres => around(width * 2);
export const aroundToFlat = (girth: AroundMillimetres): FlatMillimetres => flat(girth / 2);
