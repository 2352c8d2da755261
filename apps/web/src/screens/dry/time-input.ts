const two = (part: number): string => `${part}`.padStart(2, '0');

/** A moment as a field of date and time takes it: in the device's own zone, to the minute. */
export const toTimeInput = (ms: number): string => {
  const at = new Date(ms);
  const day = [at.getFullYear(), two(at.getMonth() + 1), two(at.getDate())].join('-');
  return `${day}T${two(at.getHours())}:${two(at.getMinutes())}`;
};

/** Back again; null where the field is empty or half filled. */
export const fromTimeInput = (text: string): number | null => {
  const ms = /^\d{4}-\d\d-\d\dT\d\d:\d\d/.test(text) ? new Date(text).getTime() : Number.NaN;
  return Number.isNaN(ms) ? null : ms;
};
