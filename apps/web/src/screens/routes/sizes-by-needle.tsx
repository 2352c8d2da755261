import type { SizeAtNeedle } from '@dryflat/engine/routes';
import { useMemo, useState } from 'react';
import {
  Card,
  ChoiceChips,
  Select,
  useLandmarkName,
  useLengths,
  useWords,
} from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { Key } from '../result/key.tsx';
import { RangeLine } from '../result/range-line.tsx';
import { scaleFor } from '../result/scale.ts';
import { STATE_NAMES } from '../result/state-names.ts';
import { shortPercent } from './short-percent.ts';
import { needleName, placesOf, sizeName, sizeTable } from './size-table.ts';

/** Every size begun afresh on each needle tried: what it would measure, and how it would fit. */
export const SizesByNeedle = ({
  sizes,
  judgedAt,
}: {
  sizes: readonly SizeAtNeedle[];
  judgedAt: 'dried' | 'worn' | 'rewashed';
}) => {
  const { record } = useGarment();
  const one = record.pattern.sizes.length === 1;
  if (sizes.length === 0 || (one && sizes.length === 1)) return null;
  const judged = STATE_NAMES[judgedAt].label.toLowerCase();
  return (
    <Card title={`Before casting on: ${one ? 'which needle' : 'size and needle'}`}>
      <p className="df-soft">
        {one
          ? `Begun afresh on each, and judged ${judged}.`
          : `Each size begun afresh and judged ${judged}. A blend takes one size’s stitches and the lengths of another.`}
      </p>
      {sizes.some(({ chanceAllFit }) => chanceAllFit !== null) && <Chances sizes={sizes} />}
      <Drawn sizes={sizes} />
    </Card>
  );
};

const Chances = ({ sizes }: { sizes: readonly SizeAtNeedle[] }) => {
  const { needles, rows } = useMemo(() => sizeTable(sizes), [sizes]);
  return (
    <table className="ro-table">
      <caption>Chance that all of it fits</caption>
      <thead>
        <tr>
          <td />
          {needles.map((mm) => (
            <th key={mm} scope="col">
              {needleName(mm)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, chances }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {chances.map((chance, k) => (
              <td
                key={needles[k]}
                style={{
                  background: `color-mix(in srgb, var(--df-nettle-wash) ${100 * Math.sqrt(chance ?? 0)}%, transparent)`,
                }}
              >
                {chance === null ? '–' : shortPercent(chance)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
};

const Drawn = ({ sizes }: { sizes: readonly SizeAtNeedle[] }) => {
  const { record } = useGarment();
  const nameOf = useLandmarkName();
  const say = useWords();
  const [chosen, setChosen] = useState<string | null>(null);
  const [picked, setPicked] = useState<string | null>(null);
  const needles = useMemo(() => sizeTable(sizes).needles, [sizes]);
  const places = useMemo(() => placesOf(sizes), [sizes]);
  const needle =
    needles.find((mm) => `${mm}` === chosen) ??
    needles.find((mm) => mm === (record.needleMm ?? null)) ??
    needles[0] ??
    null;
  const place = places.find((each) => each === picked) ?? places[0] ?? '';
  const shown = sizes.filter(({ needleMm }) => needleMm === needle);
  return (
    <>
      <div className="df-columns">
        {needles.length > 1 && (
          <ChoiceChips
            label="On"
            value={`${needle}`}
            onChange={setChosen}
            choices={needles.map((mm) => ({ value: `${mm}`, label: needleName(mm) }))}
          />
        )}
        {places.length > 1 && (
          <Select
            label="Measured at"
            value={place}
            onChange={setPicked}
            options={places.map((each) => ({ value: each, label: nameOf(each) }))}
          />
        )}
      </div>
      {shown[0]?.gaugeFrom === 'model' && (
        <p className="df-soft">
          Nothing was knit on this needle: its {say('gauge')} is carried over from another. Common
          practice, no source.
        </p>
      )}
      <Lines sizes={shown} place={place} />
    </>
  );
};

/** One line for each size, all on one scale, so that the wanted range is a field down the middle. */
const Lines = ({ sizes, place }: { sizes: readonly SizeAtNeedle[]; place: string }) => {
  const { range } = useLengths();
  const rows = sizes.flatMap((each) => {
    const at = each.landmarks.find(({ landmark }) => landmark === place);
    return at ? [{ name: sizeName(each), ...at }] : [];
  });
  const scale = scaleFor(
    rows.flatMap(({ finishedMm, wantedMm }) => [
      finishedMm.p05Mm,
      finishedMm.p95Mm,
      wantedMm?.min,
      wantedMm?.max,
    ]),
  );
  const wanted = rows.some(({ wantedMm }) => wantedMm !== null);
  return (
    <>
      <ol className="ro-sizes">
        {rows.map(({ name, finishedMm, wantedMm, chance }) => (
          <li key={name}>
            <span>
              <strong>{name}</strong>
              <span className="ro-size-range">{range(finishedMm.p05Mm, finishedMm.p95Mm)}</span>
            </span>
            <RangeLine scale={scale} range={finishedMm} wanted={wantedMm} />
            <span className="ro-size-chance">{chance !== null && shortPercent(chance)}</span>
          </li>
        ))}
      </ol>
      <Key of={wanted ? ['range', 'wanted'] : ['range']} />
    </>
  );
};
