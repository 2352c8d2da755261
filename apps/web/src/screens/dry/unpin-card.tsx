import { type MatWork, type PinCounts, pinsIn, pinTotal } from '@dryflat/record';
import { announce, Button, Card, Icon, Notice } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { workName } from '../pinning/work-name.ts';
import './dry.css';
import { isUnpinned, kindsIn, kindWords, NO_PINS, type PinKind, wasPinned } from './pin-kinds.ts';

/** Pins come out of each piece, counted against what went in. */
export const UnpinCards = () => {
  const { record } = useGarment();
  const works = (record.onMat ?? []).filter(wasPinned);
  return (
    <>
      {works.map((work) => (
        <UnpinCard key={work.id} work={work} />
      ))}
    </>
  );
};

const useOut = (work: MatWork) => {
  const { change } = useGarment();
  return (next: PinCounts): void =>
    change((draft) => {
      const found = draft.onMat?.find(({ id }) => id === work.id);
      if (found) found.out = { ...next };
    });
};

const UnpinCard = ({ work }: { work: MatWork }) => {
  const { readOnly } = useGarment();
  const put = useOut(work);
  const there = pinsIn(work);
  const out = work.out ?? NO_PINS;
  const done = isUnpinned(work);
  const set = (kind: PinKind, count: number): void => {
    put({ ...out, [kind]: count });
    announce(`${count} of ${there[kind]} ${kindWords(kind, there[kind]).toLowerCase()} out`);
  };
  return (
    <Card title={`${workName(work)}: pins out`}>
      {done ? (
        <Notice tone="good">All {pinTotal(there)} that went in are out.</Notice>
      ) : (
        <p>Count them back into the box, kind by kind.</p>
      )}
      <ul className="df-plain">
        {kindsIn(there).map((kind) => (
          <li key={kind}>
            <Counter kind={kind} of={there[kind]} out={out[kind]} set={set} still={readOnly} />
          </li>
        ))}
      </ul>
    </Card>
  );
};

interface CounterProps {
  readonly kind: PinKind;
  readonly of: number;
  readonly out: number;
  readonly set: (kind: PinKind, count: number) => void;
  readonly still: boolean;
}

const Counter = ({ kind, of, out, set, still }: CounterProps) => {
  const name = kindWords(kind, of);
  return (
    <fieldset className="df-counter" data-done={out >= of || undefined}>
      <legend>{name}</legend>
      <Button
        aria-label={`One ${kindWords(kind, 1).toLowerCase()} less`}
        isDisabled={still || out === 0}
        onPress={() => set(kind, out - 1)}
      >
        <Icon name="less" />
      </Button>
      <span className="df-counter-number">
        <strong>{out}</strong> of {of}
      </span>
      <Button
        look="main"
        aria-label={`One ${kindWords(kind, 1).toLowerCase()} out`}
        isDisabled={still || out >= of}
        onPress={() => set(kind, out + 1)}
      >
        <Icon name="add" />
      </Button>
      <Button isDisabled={still || out >= of} onPress={() => set(kind, of)}>
        {of === 1 ? 'It is out' : `All ${of} out`}
        <span className="df-unseen">, {name.toLowerCase()}</span>
      </Button>
    </fieldset>
  );
};
