/** `1 day`, `2½ days`, `12 days`: halves below ten; `less than half a day`. */
export const daysWords = (days: number): string => {
  const halves = days < 9.75 ? Math.round(2 * days) / 2 : Math.round(days);
  if (halves === 0) return 'less than half a day';
  if (halves === 0.5) return 'half a day';
  return halves === 1 ? '1 day' : `${`${halves}`.replace('.5', '½')} days`;
};
