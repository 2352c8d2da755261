import { useEffect, useRef } from 'react';
import { announce, Icon, useLengths } from '../kit/index.ts';
import { useForecast } from '../worker/index.ts';
import { forecastLine } from './forecast-line.ts';
import { garmentHash } from './hash.ts';
import { PLACE_NAMES, type PlaceName } from './place-names.ts';
import { PLACES } from './places.ts';

/** The forecast has a line of its own, and pins are put in with the whole screen. */
const NOT_LISTED: readonly string[] = ['forecast', 'pinning'];

/**
 * The hem of the page: the forecast as it stands, which follows every entry, over the places of the
 * garment. At the bottom of a phone, where it scrolls sideways; down the side of a desk.
 */
export const Hem = ({ id, place }: { id: string; place: PlaceName }) => (
  <nav className="df-hem" aria-label="Places of this garment">
    <ForecastLink id={id} current={place === 'forecast'} />
    <ul ref={useCurrentInView(place)}>
      {PLACE_NAMES.filter((name) => !NOT_LISTED.includes(name)).map((name) => (
        <li key={name}>
          <a href={garmentHash(id, name)} aria-current={name === place ? 'page' : undefined}>
            <Icon name={PLACES[name].icon} />
            {PLACES[name].label}
          </a>
        </li>
      ))}
    </ul>
  </nav>
);

/** Scrolls the list, never the page, until the open place is in the middle of it. */
const useCurrentInView = (place: PlaceName) => {
  const list = useRef<HTMLUListElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another place is what moves it.
  useEffect(() => {
    const open = list.current?.querySelector<HTMLElement>('[aria-current]')?.parentElement;
    if (!list.current || !open) return;
    const middle = open.offsetLeft - (list.current.clientWidth - open.clientWidth) / 2;
    list.current.scrollTo({ left: middle });
  }, [place]);
  return list;
};

const ForecastLink = ({ id, current }: { id: string; current: boolean }) => {
  const now = useForecast();
  const { main, more } = forecastLine(now, useLengths());
  useTellChanges(now.pending ? null : `${main}, ${more}`);
  return (
    <a
      className="df-hem-forecast"
      href={garmentHash(id)}
      aria-current={current ? 'page' : undefined}
      data-pending={now.pending || undefined}
    >
      <Icon name="forecast" />
      <span className="df-unseen">Forecast: </span>
      <strong>{main}</strong> <span>{more}</span>
    </a>
  );
};

/** Speaks a forecast that differs from the one before; the first is not news. */
const useTellChanges = (line: string | null): void => {
  const told = useRef<string | null>(null);
  useEffect(() => {
    if (line === null) return;
    if (told.current !== null && told.current !== line) announce(`Forecast changed: ${line}`);
    told.current = line;
  }, [line]);
};
