import type { Fibre } from '@dryflat/engine/textile';
import type { Yarn } from '@dryflat/record';
import {
  Button,
  FieldGroup,
  formatCount,
  IconButton,
  Notice,
  ParsedField,
  Select,
  useWords,
} from '../../kit/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import { addFibre, freeFibres, missingShare, readShare, SHARE_SLACK } from './fibre-shares.ts';
import { useChangeYarn } from './use-change-yarn.ts';
import { fibreName } from './yarn-words.ts';

/** What the yarn is made of, in shares that make a whole. */
export const FibresField = ({ yarn }: { yarn: Yarn }) => {
  const { readOnly } = useGarment();
  const say = useWords();
  const edit = useChangeYarn(yarn.id);
  const [next] = freeFibres(yarn.fibres);
  return (
    <FieldGroup legend={`${say('Fiber')} on the label`}>
      {yarn.fibres.map((part) => (
        <FibreRow key={part.fibre} yarn={yarn} fibre={part.fibre} percent={part.percent} />
      ))}
      <SumNotice yarn={yarn} />
      {!readOnly && next !== undefined && (
        <div className="df-row">
          <Button icon="add" onPress={() => edit((each) => addFibre(each.fibres, next))}>
            {yarn.fibres.length === 0 ? `Add a ${say('fiber')}` : `Add another ${say('fiber')}`}
          </Button>
        </div>
      )}
    </FieldGroup>
  );
};

const FibreRow = ({ yarn, fibre, percent }: { yarn: Yarn; fibre: Fibre; percent: number }) => {
  const { readOnly } = useGarment();
  const { words } = useView();
  const say = useWords();
  const edit = useChangeYarn(yarn.id);
  const name = fibreName(fibre, words);
  const change = (recipe: (part: Yarn['fibres'][number]) => void): void =>
    edit((each) => {
      const part = each.fibres.find((other) => other.fibre === fibre);
      if (part) recipe(part);
    });
  const remove = (): void =>
    edit((each) => {
      each.fibres = each.fibres.filter((other) => other.fibre !== fibre);
    });
  return (
    <div className="ya-fibre">
      <Select
        label={say('Fiber')}
        value={fibre}
        onChange={(next) =>
          change((part) => {
            part.fibre = next;
          })
        }
        options={[fibre, ...freeFibres(yarn.fibres)].map((each) => ({
          value: each,
          label: fibreName(each, words),
        }))}
        readOnly={readOnly}
      />
      <ParsedField<number>
        label={`Share of ${name.toLowerCase()}`}
        path={`yarns/${yarn.id}/fibres/${fibre}`}
        unit={{ sign: '%', spoken: 'in percent' }}
        value={percent}
        print={formatCount}
        parse={(text) => readShare(text, `Share of ${name.toLowerCase()}`)}
        onCommit={(next) =>
          next !== null &&
          change((part) => {
            part.percent = next;
          })
        }
      />
      {!readOnly && <IconButton icon="bin" label={`Remove ${name}`} onPress={remove} />}
    </div>
  );
};

const SumNotice = ({ yarn }: { yarn: Yarn }) => {
  const missing = missingShare(yarn.fibres);
  if (yarn.fibres.length === 0 || Math.abs(missing) <= SHARE_SLACK) return null;
  return (
    <Notice tone="wrong">
      {missing > 0
        ? `The shares make ${formatCount(100 - missing)} %: ${formatCount(missing)} % are missing. Correct a share, or add what is missing.`
        : `The shares make ${formatCount(100 - missing)} %, which is ${formatCount(-missing)} % too much. Correct a share.`}
    </Notice>
  );
};
