/** Something to be reminded of at a time. */
export interface Reminder {
  /** Names what it is of: reminders of the same name are replaced together. */
  readonly of: string;
  readonly atMs: number;
  readonly title: string;
  readonly body: string;
  /** Where it is dealt with. */
  readonly hash: string;
}

/** Under this name they are kept on the device. */
export const REMINDERS = 'reminders';

const isReminder = (each: unknown): each is Reminder => {
  const { of, atMs, title, body, hash } = (each ?? {}) as Record<string, unknown>;
  return [of, title, body, hash].every((text) => typeof text === 'string') && Number.isFinite(atMs);
};

/** Reads the note of a device; what is not understood is nothing to be reminded of. */
export const readReminders = (note: string | null): readonly Reminder[] => {
  try {
    const read: unknown = JSON.parse(note ?? '[]');
    return Array.isArray(read) ? read.filter(isReminder) : [];
  } catch {
    return [];
  }
};

/** Those of one name replaced; none switches them off. */
export const withReminders = (
  all: readonly Reminder[],
  of: string,
  next: readonly Reminder[],
): readonly Reminder[] => [...all.filter((each) => each.of !== of), ...next];

/** A reminder that is later than this was missed while the app was closed or the device slept, ms. */
const MISSED = 10 * 60_000;

export interface Due {
  /** To be told now. */
  readonly due: readonly Reminder[];
  /** Were due while nobody could tell. */
  readonly missed: readonly Reminder[];
  readonly ahead: readonly Reminder[];
}

export const dueOf = (all: readonly Reminder[], nowMs: number): Due => ({
  due: all.filter(({ atMs }) => atMs <= nowMs && nowMs - atMs <= MISSED),
  missed: all.filter(({ atMs }) => nowMs - atMs > MISSED),
  ahead: all.filter(({ atMs }) => atMs > nowMs),
});
