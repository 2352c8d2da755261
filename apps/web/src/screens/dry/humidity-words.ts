/** What a room is like, for those without a hygrometer. */
export interface RoomWord {
  readonly id: 'heated' | 'usual' | 'damp';
  readonly label: string;
  readonly note: string;
  /** Relative humidity that it is taken as, and the ends of what such a room may have, percent. */
  readonly percent: number;
  readonly low: number;
  readonly high: number;
}

/** Common practice, no source: rooms where people live are mostly between these. */
export const ROOM_WORDS: readonly RoomWord[] = [
  {
    id: 'heated',
    label: 'Dry, heated',
    note: 'Winter heating on; lips and skin feel dry. 25 to 42 %',
    percent: 33,
    low: 25,
    high: 42,
  },
  {
    id: 'usual',
    label: 'Usual',
    note: 'Nothing to notice. 40 to 60 %',
    percent: 50,
    low: 40,
    high: 60,
  },
  {
    id: 'damp',
    label: 'Damp',
    note: 'Rainy days, no heating, a bathroom or cellar; windows mist. 58 to 80 %',
    percent: 69,
    low: 58,
    high: 80,
  },
];

/** The word that stands for this humidity; null for a number of a hygrometer. */
export const roomWordOf = (percent: number): RoomWord | null =>
  ROOM_WORDS.find((each) => each.percent === percent) ?? null;
