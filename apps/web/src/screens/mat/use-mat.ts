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
import {
  asPlanned,
  type MovedPin,
  pinsAround,
  pinsAt,
  placesOf,
  samePlaces,
} from './moved-pins.ts';

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
  /** Pins of this piece that were moved, and that the newest plan has no pin for. */
  readonly lost: number;
  readonly plan: () => void;
  readonly cancel: () => void;
  readonly place: (pin: number, x: number, y: number) => void;
  readonly nudge: (pin: number, dx: number, dy: number) => void;
  /** Keeps the places of pins, once they are let go of. */
  readonly settle: () => void;
  /** Lets go of the moved pins of this piece. */
  readonly putBack: () => void;
  readonly planAround: () => void;
}

interface Kept {
  readonly key: string;
  readonly planned: Planned;
}
/** The last plan of each garment: coming back to the mat shows it at once. */
const kept = new Map<string, Kept>();

/** A pin waits so long for the fabric that follows it, ms: two frames. */
const ALONE_AFTER = 33;

const NONE: readonly MovedPin[] = [];

/** What comes after a plan, or beside it, does not change it; photos are megabytes besides. */
const BESIDE = {
  name: '',
  notes: [],
  forecasts: [],
  onMat: [],
  dryings: [],
  photos: [],
  finished: undefined,
} satisfies Partial<Record<keyof GarmentRecord, unknown>>;

/** What a plan hangs on: a note, a new name or a pin that is moved in it asks for no other. */
const keyOf = (record: GarmentRecord, choices: MatChoices): string => {
  const pins = (record.plan.pins ?? NONE).filter(({ around }) => around);
  const plan = { ...record.plan, pins };
  return JSON.stringify([{ ...record, ...BESIDE, plan }, choices]);
};

/** Plans the piece in one worker, and holds it under the hand in another. */
export const useMat = (
  record: GarmentRecord,
  choices: MatChoices,
  save: (pins: readonly MovedPin[]) => void,
): Mat => {
  const key = useMemo(() => keyOf(record, choices), [record, choices]);
  const before = kept.get(record.id);
  const [planned, setPlanned] = useState<Planned | null>(before?.planned ?? null);
  const [places, setPlaces] = useState<PinPlaces>(before ? asPlanned(before.planned) : []);
  // Where pins were put last; `places` are those that are drawn.
  const latest = useRef(places);
  const [planning, setPlanning] = useState<Planning>({ at: 'ready' });
  const shown = useRef(() => {});
  const hand = useHand(planned, shown);
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
      });
    },
    [record.id],
  );

  const ask = useRef({ record, choices });
  ask.current = { record, choices };
  const plan = useCallback((): void => {
    asking.current = key;
    setPlanning({ at: 'working', done: 0 });
    plans.current?.ask(ask.current.record, ask.current.choices);
  }, [key]);

  useEffect(() => {
    plans.current = planner(makeMatWorker, hear);
    return () => plans.current?.stop();
  }, [hear]);
  useEffect(() => {
    if (kept.get(record.id)?.key !== key) plan();
    else if (asking.current !== key) {
      // Back to what the plan is of, while another was asked for.
      asking.current = key;
      plans.current?.stop();
      setPlanning({ at: 'ready' });
    }
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
    },
    [hand.move, show],
  );
  const place = useCallback(
    (pin: number, x: number, y: number): void =>
      put(latest.current.map((each, k) => (k === pin ? [x, y] : each))),
    [put],
  );
  const pins = record.plan.pins ?? NONE;
  // While a new plan is awaited, pins stay where they are in the last.
  const current = kept.get(record.id)?.key === key;
  const { cloth } = hand;
  const left = useMemo(
    () => (current && planned && cloth ? placesOf(planned, cloth, pins) : null),
    [current, planned, cloth, pins],
  );
  useEffect(() => {
    if (left && !samePlaces(left.places, latest.current)) put(left.places);
  }, [left, put]);
  const settle = (): void => {
    if (left && planned && cloth) save(pinsAt(planned, cloth, latest.current, pins));
  };
  const nudge = (pin: number, dx: number, dy: number): void => {
    const [x, y] = latest.current[pin]!;
    place(pin, x + dx, y + dy);
    settle();
  };
  const putBack = (): void => {
    save(planned ? pins.filter(({ piece }) => piece !== planned.plan.name) : NONE);
    if (planned) put(asPlanned(planned));
  };
  return {
    planning,
    planned,
    cloth,
    lying: hand.lying,
    handBroken: hand.broken,
    places,
    lost: left?.lost.length ?? 0,
    plan,
    cancel: () => {
      plans.current?.stop();
      setPlanning({ at: 'stopped' });
    },
    place,
    nudge,
    settle,
    putBack,
    planAround: () => {
      if (left && planned && cloth) save(pinsAround(planned, cloth, latest.current, pins));
    },
  };
};

/** The worker under the hand: lays out each new plan, then follows the pins. */
const useHand = (planned: Planned | null, shown: RefObject<() => void>) => {
  const [laid, setLaid] = useState<{ cloth: Cloth; of: Planned | null } | null>(null);
  const [lying, setLying] = useState<Lying | null>(null);
  const [broken, setBroken] = useState<string | null>(null);
  const held = useRef<Holder | null>(null);
  const opened = useRef<Planned | null>(null);
  useEffect(() => {
    held.current = holder(makeMatWorker, (told) => {
      if (told.kind === 'open') setLaid({ cloth: told.cloth, of: opened.current });
      if (told.kind === 'open' || told.kind === 'lying') setLying(told.lying);
      if (told.kind === 'lying') shown.current();
      if (told.kind === 'broken') setBroken(told.message);
      if (told.kind === 'faults') setBroken(told.faults.map(({ problem }) => problem).join('; '));
    });
    return () => held.current?.stop();
  }, [shown]);
  useEffect(() => {
    setLaid(null);
    setLying(null);
    setBroken(null);
    if (planned === null) return;
    opened.current = planned;
    held.current?.open(planned);
  }, [planned]);
  const move = useCallback((places: PinPlaces): void => held.current?.move(places), []);
  // Never the fabric of another plan.
  const cloth = laid !== null && laid.of === planned ? laid.cloth : null;
  return { cloth, lying: cloth && lying, broken, move };
};
