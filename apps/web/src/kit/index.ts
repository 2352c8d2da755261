/**
 * The kit: our own look on accessible parts, for every screen.
 *
 * How to write a screen
 * - A screen is `apps/web/src/screens/<place>/index.tsx` with a default export, no props. It is
 *   loaded when it is first opened, inside the garment's frame, which brings the page's `<h1>` (the
 *   garment's name), navigation, undo and the live forecast line. Start at `<h2>`.
 * - `useGarment()` (../../store/index.ts) gives `record`, `change`, `readOnly`. Change a copy:
 *   `change((draft) => { draft.needleMm = 4; })`. Only what differs is written, as a step of undo.
 *   Leave a field out with `delete draft.needleMm` or by setting it to undefined. New parts get
 *   `id: newId()`; lists of parts with ids keep their identity, so move and sort freely.
 * - `useForecast()` (../../worker/index.ts) gives `forecast`, `steps`, `pending`, `faults`, `broken`;
 *   it follows every change by itself. Show `faults` with `FaultList`, `broken` in a `Notice`.
 * - Print lengths only with `useLengths()`: `length`, `range`, `signed`, `sentence` (fills the
 *   `{mm:…}` marks in sentences of the engine). They switch between cm and in at once.
 * - Words of the craft come from `useWords()`, names of landmarks from their `name.us` / `name.uk`
 *   with `useView().words`.
 *
 * Fields
 * - `LengthField`, `MassField`, `CountField` take any spelling (`13 3/8`, `34,5 cm`), commit when the
 *   typing pauses or the field is left, show their fault in place and keep unusable text for good.
 *   Each needs a `path` that names the field by ids and never by place in a list:
 *   `evidence/${specimen.id}/readings/${reading.id}/overMm`. `onCommit(null)` means emptied.
 *   For another kind of value use `ParsedField` with a parser that returns a `Result`.
 * - `TextField` is controlled: `value={record.name} onChange={(name) => change(...)}`.
 * - `ChoiceChips` for up to about six choices, `Select` for more (options or groups of options),
 *   `SpanChoice` wherever a width may be flat or around: leave `value` undefined until answered.
 * - Pass `readOnly` from `useGarment()` to `TextField`, `ChoiceChips`, `Select`; the parsed fields
 *   know it themselves.
 *
 * Around them
 * - `Card` (title, children), `FieldGroup` (legend), `Disclosure`, `EmptyState`, `Notice`.
 * - `Dialog` and `Confirm` are rendered while open: `{open && <Dialog onClose={…}>…</Dialog>}`.
 * - `toast('Reading removed.', undo)` after something was taken away; `announce(text)` for changes
 *   that only a screen reader would miss.
 * - Classes: `df-stack`, `df-row`, `df-columns`, `df-number` (reads at arm's length), `df-soft`,
 *   `df-unseen`. Colours and sizes only through the `--df-*` properties of theme.css; lengths in
 *   rem; nothing with a fixed height; touch targets at least `var(--df-touch)`.
 */
export { Announcer, announce } from './announce.tsx';
export { Button, type ButtonProps, IconButton, type IconButtonProps } from './button.tsx';
export { Card, EmptyState, FieldGroup, Notice } from './card.tsx';
export { type Choice, ChoiceChips, type ChoiceChipsProps } from './choice-chips.tsx';
export { CountField, type CountFieldProps } from './count-field.tsx';
export { Confirm, type ConfirmProps, Dialog, type DialogProps } from './dialog.tsx';
export { Disclosure, type DisclosureProps } from './disclosure.tsx';
export { FaultList } from './fault-list.tsx';
export { Icon, type IconName } from './icons.tsx';
export { kindName } from './kind-names.ts';
export { landmarkName, useLandmarkName } from './landmark-name.ts';
export { LengthField, type LengthFieldProps } from './length-field.tsx';
export { MassField, type MassFieldProps } from './mass-field.tsx';
export { NeedleField, type NeedleFieldProps } from './needle-field.tsx';
export { formatCount, parseCount } from './parse-count.ts';
export { ParsedField, type ParsedFieldProps } from './parsed-field.tsx';
export { SectionFaults } from './section-faults.tsx';
export { Select, type SelectGroup, type SelectOption, type SelectProps } from './select.tsx';
export { SpanChoice, type SpanChoiceProps } from './span-choice.tsx';
export { TextField, type TextFieldProps } from './text-field.tsx';
export { Toasts, toast } from './toast.tsx';
export { useUnitWord } from './unit-words.ts';
export { useFaultText } from './use-fault-text.ts';
export { type Lengths, useLengths } from './use-lengths.ts';
export { type CraftWord, useWords } from './words.ts';
