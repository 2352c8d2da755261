/** An id as a calendar's events can carry it: letters, digits, hyphens; different ids stay different. */
export const calendarId = (of: string, id: string): string =>
  `${of}-${id.replace(/[^A-Za-z0-9]/g, (mark) => `-${(mark.codePointAt(0) ?? 0).toString(16)}-`)}`;
