/** Places and sizes are millimetres of the paper: x to the right, y down, from its top left corner. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

export interface Rect extends Place {
  readonly width: number;
  readonly height: number;
}

/** How a line is drawn; colours are `#rrggbb`. A mark without a stroke has no line around it. */
export interface Stroke {
  readonly colour: string;
  readonly widthMm: number;
  /** Lengths drawn and left out in turn, mm; a whole line where it is left out. */
  readonly dash?: readonly number[];
}

export interface PathMark {
  readonly kind: 'path';
  /** SVG path data in millimetres, with M, L, C and Z only. */
  readonly d: string;
  readonly stroke?: Stroke;
  readonly fill?: string;
  /** Inside by crossings instead of by turns: a band between two outlines. */
  readonly evenOdd?: boolean;
}

export interface LineMark {
  readonly kind: 'line';
  readonly from: Place;
  readonly to: Place;
  readonly stroke: Stroke;
}

export interface BoxMark extends Rect {
  readonly kind: 'box';
  readonly stroke?: Stroke;
  readonly fill?: string;
}

export interface DotMark extends Place {
  readonly kind: 'dot';
  readonly radius: number;
  readonly stroke?: Stroke;
  readonly fill?: string;
}

export type Weight = 'regular' | 'strong';
export type Align = 'start' | 'middle' | 'end';

/** One line of text; `x` and `y` are on its baseline, at the end that `align` names. */
export interface TextMark extends Place {
  readonly kind: 'text';
  readonly text: string;
  /** Height of the type, mm. */
  readonly sizeMm: number;
  readonly weight: Weight;
  readonly align: Align;
  readonly colour: string;
}

/** Pictures that a PDF holds as they are. */
export type PictureType = 'image/jpeg' | 'image/png';

/** A picture, filling its box. */
export interface PictureMark extends Rect {
  readonly kind: 'picture';
  readonly type: PictureType;
  readonly base64: string;
  /** What it shows, in words. */
  readonly alt: string;
}

export type Mark = PathMark | LineMark | BoxMark | DotMark | TextMark | PictureMark;

/** One side of paper and everything on it, in drawing order. */
export interface Sheet {
  readonly widthMm: number;
  readonly heightMm: number;
  /** What it is, for lists and readers: `Full size, front, B2`. */
  readonly title: string;
  readonly marks: readonly Mark[];
}
