export { askLeave, type Leave, leaveNow } from './notify.ts';
export { ReminderKeeper } from './reminder-keeper.tsx';
export { REMINDERS, type Reminder, readReminders, withReminders } from './reminders.ts';
