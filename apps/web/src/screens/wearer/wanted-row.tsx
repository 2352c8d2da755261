import type { WantedFit } from '@dryflat/record';
import {
  LengthField,
  Notice,
  SectionFaults,
  Select,
  type SelectOption,
  useLandmarkName,
  useLengths,
} from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { setWanted } from './change-wearer.ts';
import { firstFinished, firstOwnEase } from './first-wish.ts';
import { FitPicture } from './fit-picture.tsx';
import { presetOf, presetsFor } from './fit-presets.ts';
import { bodyIdAt, bodyMmAt } from './wanted-places.ts';
import { WishSpan } from './wish-span.tsx';

/** Said beside the fields in words of their own. */
const SHOWN_IN_PLACE = ['question-span', 'range-upside-down', 'doubt-ease-without-body'];

/** Before there is a pattern, nobody needs to be told that it lacks the place. */
const WITHOUT_PATTERN = [...SHOWN_IN_PLACE, 'doubt-wanted-unmeasured'];

const NONE = 'none';
const OWN = 'own';
const FINISHED = 'finished';

/** One place of the garment: a ready range, one's own, a finished size, or no wish. */
export const WantedRow = ({ landmark }: { landmark: string }) => {
  const { record, change, readOnly } = useGarment();
  const { easeRange, sentence } = useLengths();
  const name = useLandmarkName()(landmark);
  const wish = record.wearer.wanted.find((each) => each.landmark === landmark);
  const at = record.wearer.wanted.findIndex((each) => each.landmark === landmark);
  const bodyMm = bodyMmAt(record, landmark);
  const { presets, from } = presetsFor(landmark, bodyMm);
  const hasBody = bodyIdAt(landmark) !== null;

  const options: SelectOption<string>[] = [
    { value: NONE, label: 'No wish, not judged' },
    ...(hasBody
      ? [
          ...presets.map(({ id, label, minMm, maxMm }) => ({
            value: id,
            label: `${label}: ${easeRange(minMm, maxMm)}`,
          })),
          { value: OWN, label: 'My own ease' },
        ]
      : []),
    { value: FINISHED, label: hasBody ? 'A finished size' : 'Between two sizes' },
  ];
  const value = chosenOf(wish, presets);
  const choose = (picked: string): void =>
    change((draft) => {
      const ready = presets.find(({ id }) => id === picked);
      const range = ready ?? firstOwnEase(wish);
      if (picked === NONE) setWanted(draft, landmark, null);
      else if (picked === FINISHED) setWanted(draft, landmark, firstFinished(record, landmark));
      else
        setWanted(draft, landmark, {
          kind: 'ease',
          landmark,
          minMm: range.minMm,
          maxMm: range.maxMm,
        });
    });
  return (
    <section className="we-wish" aria-label={name}>
      <h3>{name}</h3>
      <Select
        label={`${name}: ${hasBody ? 'ease over the body' : 'finished size'}`}
        labelUnseen
        value={value}
        onChange={choose}
        options={options}
        readOnly={readOnly}
      />
      {presets.some(({ id }) => id === value) && <p className="df-hint">{sentence(from)}</p>}
      {wish && <WishFields wish={wish} />}
      {wish?.kind === 'finished' && <WishSpan wish={wish} />}
      {wish && <FitPicture landmark={landmark} wish={wish} />}
      {wish?.kind === 'ease' && bodyMm === null && (
        <Notice tone="unsure">
          Ease is over a body, and the body has no measurement here yet. Add it above, or ask for a
          finished size.
        </Notice>
      )}
      {wish && (
        <SectionFaults
          prefix={`wearer.wanted[${at}]`}
          except={record.pattern.measurements.length === 0 ? WITHOUT_PATTERN : SHOWN_IN_PLACE}
        />
      )}
    </section>
  );
};

const chosenOf = (wish: WantedFit | undefined, presets: Parameters<typeof presetOf>[0]): string => {
  if (wish === undefined) return NONE;
  if (wish.kind === 'finished') return FINISHED;
  return presetOf(presets, wish)?.id ?? OWN;
};

const WishFields = ({ wish }: { wish: WantedFit }) => {
  const { change } = useGarment();
  const signed = wish.kind === 'ease';
  const set = (part: { minMm: number } | { maxMm: number }): void =>
    change((draft) => setWanted(draft, wish.landmark, { ...wish, ...part }));
  return (
    <>
      <div className="we-ends">
        <LengthField
          label={signed ? 'Ease, at least' : 'At least'}
          path={`wearer/wanted/${wish.landmark}/${wish.kind}/minMm`}
          valueMm={wish.minMm}
          signed={signed}
          onCommit={(minMm) => minMm !== null && set({ minMm })}
        />
        <LengthField
          label={signed ? 'Ease, at most' : 'At most'}
          path={`wearer/wanted/${wish.landmark}/${wish.kind}/maxMm`}
          valueMm={wish.maxMm}
          signed={signed}
          onCommit={(maxMm) => maxMm !== null && set({ maxMm })}
        />
      </div>
      {wish.minMm > wish.maxMm && (
        <Notice tone="wrong">The least is more than the most. Swap the two.</Notice>
      )}
    </>
  );
};
