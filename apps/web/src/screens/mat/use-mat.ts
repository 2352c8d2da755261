import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord } from '@dryflat/record';
import { type RefObject, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import {
  type Cloth,
  type Holder,
  holder,
  type Lying,
  type MatChoices,
  type MatTold,
  makeMatWorker,
  type Planned,
  type Planner,
  planner,
} from '../../worker/mat/index.ts';

export type Planning =
  | { readonly at: 'ready' }
  | { readonly at: 'working'; readonly done: number }
  | { readonly at: 'stopped' }
  | { readonly at: 'faults'; readonly faults: readonly Fault[] }
  | { readonly at: 'broken'; readonly message: string };

/** Where each thing of the plan stands now, x and y on the mat, mm. */
export type PinPlaces = readonly (readonly [number, number])[];

export interface Mat {
  readonly planning: Planning;
  /** The newest plan; stays while the next one is worked on. */
  readonly planned: Planned | null;
  /** The fabric under the hand; null until it is laid out. */
  readonly cloth: Cloth | null;
  readonly lying: Lying | null;
  /** What went wrong under the hand. */
  readonly handBroken: string | null;
  readonly places: PinPlaces;
  readonly plan: (pinned?: MatChoices['pinned']) => void;
  readonly cancel: () => void;
  readonly place: (pin: number, x: number, y: number) => void;
  readonly nudge: (pin: number, dx: number, dy: number) => void;
  readonly putBack: () => void;
}

interface Kept {
  readonly key: string;
  readonly planned: Planned;
  readonly places: PinPlaces;
}
/** The last plan of each garment: coming back to the mat shows it as it was left. */
const kept = new Map<string, Kept>();

/** A pin waits so long for the fabric that follows it, ms: two frames. */
const ALONE_AFTER = 33;

const asPlanned = ({ plan }: Planned): PinPlaces => plan.pins.map(({ xMm, yMm }) => [xMm, yMm]);

/** What a plan hangs on: a note or a new name asks for no other. */
const keyOf = (record: GarmentRecord, choices: MatChoices): string =>
  JSON.stringify([{ ...record, name: '', notes: [], forecasts: [] }, choices]);

/** Plans the piece in one worker, and holds it under the hand in another. */
export const useMat = (record: GarmentRecord, choices: MatChoices): Mat => {
  const key = useMemo(() => keyOf(record, choices), [record, choices]);
  const before = kept.get(record.id);
  const [planned, setPlanned] = useState<Planned | null>(before?.planned ?? null);
  const [places, setPlaces] = useState<PinPlaces>(before?.places ?? []);
  // Where pins were put last; `places` are those that are drawn.
  const latest = useRef(places);
  const [planning, setPlanning] = useState<Planning>({ at: 'ready' });
  const shown = useRef(() => {});
  const hand = useHand(planned, before?.places ?? null, shown);
  const plans = useRef<Planner | null>(null);
  const asking = useRef(key);

  const hear = useCallback(
    (told: MatTold): void => {
      if (told.kind === 'progress') setPlanning({ at: 'working', done: told.done });
      if (told.kind === 'faults') setPlanning({ at: 'faults', faults: told.faults });
      if (told.kind === 'broken') setPlanning({ at: 'broken', message: told.message });
      if (told.kind !== 'plan') return;
      setPlanning({ at: 'ready' });
      setPlanned(told.planned);
      latest.current = asPlanned(told.planned);
      setPlaces(latest.current);
      kept.set(record.id, {
        key: asking.current,
        planned: told.planned,
        places: asPlanned(told.planned),
      });
    },
    [record.id],
  );

  const plan = useCallback(
    (pinned: MatChoices['pinned'] = []): void => {
      asking.current = key;
      setPlanning({ at: 'working', done: 0 });
      plans.current?.ask(record, { ...choices, pinned });
    },
    [key, record, choices],
  );

  useEffect(() => {
    plans.current = planner(makeMatWorker, hear);
    return () => plans.current?.stop();
  }, [hear]);
  useEffect(() => {
    if (kept.get(record.id)?.key !== key) plan();
  }, [key, plan, record.id]);

  const late = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const show = useCallback((): void => {
    clearTimeout(late.current);
    late.current = undefined;
    setPlaces(latest.current);
  }, []);
  // Pins are drawn with the fabric that follows them, in one go; alone where it takes its time.
  shown.current = show;
  useEffect(() => () => clearTimeout(late.current), []);
  const put = useCallback(
    (next: PinPlaces): void => {
      latest.current = next;
      hand.move(next);
      late.current ??= setTimeout(show, ALONE_AFTER);
      const now = kept.get(record.id);
      if (now) kept.set(record.id, { ...now, places: next });
    },
    [hand.move, record.id, show],
  );
  const place = useCallback(
    (pin: number, x: number, y: number): void =>
      put(latest.current.map((each, k) => (k === pin ? [x, y] : each))),
    [put],
  );
  const nudge = useCallback(
    (pin: number, dx: number, dy: number): void => {
      const [x, y] = latest.current[pin]!;
      place(pin, x + dx, y + dy);
    },
    [place],
  );
  return {
    planning,
    planned,
    cloth: hand.cloth,
    lying: hand.lying,
    handBroken: hand.broken,
    places,
    plan,
    cancel: () => {
      plans.current?.stop();
      setPlanning({ at: 'stopped' });
    },
    place,
    nudge,
    putBack: () => planned && put(asPlanned(planned)),
  };
};

/** The worker under the hand: lays out each new plan, then follows the pins. */
const useHand = (
  planned: Planned | null,
  first: PinPlaces | null,
  shown: RefObject<() => void>,
) => {
  const [cloth, setCloth] = useState<Cloth | null>(null);
  const [lying, setLying] = useState<Lying | null>(null);
  const [broken, setBroken] = useState<string | null>(null);
  const held = useRef<Holder | null>(null);
  const begin = useRef(first);
  useEffect(() => {
    held.current = holder(makeMatWorker, (told) => {
      if (told.kind === 'open') setCloth(told.cloth);
      if (told.kind === 'open' || told.kind === 'lying') setLying(told.lying);
      if (told.kind === 'lying') shown.current();
      if (told.kind === 'broken') setBroken(told.message);
      if (told.kind === 'faults') setBroken(told.faults.map(({ problem }) => problem).join('; '));
    });
    return () => held.current?.stop();
  }, [shown]);
  useEffect(() => {
    setCloth(null);
    setLying(null);
    setBroken(null);
    if (planned === null) return;
    held.current?.open(planned);
    // A mat that was left with pins moved is found so again.
    if (begin.current) held.current?.move(begin.current);
    begin.current = null;
  }, [planned]);
  const move = useCallback((places: PinPlaces): void => held.current?.move(places), []);
  return { cloth, lying, broken, move };
};
