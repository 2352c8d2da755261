/** The day that the knitter's clock shows, as ISO writes it. */
export const isoDay = (clock: Date): string => {
  const two = (part: number): string => `${part}`.padStart(2, '0');
  return `${clock.getFullYear()}-${two(clock.getMonth() + 1)}-${two(clock.getDate())}`;
};

export const today = (): string => isoDay(new Date());

/** An ISO day as it is written where the knitter lives; the text itself where it is no day. */
export const printDay = (day: string): string => {
  const at = new Date(`${day}T00:00:00`);
  return Number.isNaN(at.getTime())
    ? day
    : at.toLocaleDateString(undefined, { day: 'numeric', month: 'long', year: 'numeric' });
};
