import type { Wearer } from '@dryflat/record';
import { Card, ChoiceChips, TextField } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { BodyCard } from './body-card.tsx';
import { bodyPlacesFor } from './body-places.ts';
import { OthersCard } from './others-card.tsx';
import { WantedCard } from './wanted-card.tsx';
import './wearer.css';

const GROUPS: readonly { value: Wearer['group']; label: string }[] = [
  { value: 'woman', label: 'A woman' },
  { value: 'man', label: 'A man' },
  { value: 'child', label: 'A child' },
  { value: 'baby', label: 'A baby' },
  { value: 'nobody', label: 'Nobody: a blanket, a gift to come' },
];

/** What is said while there is no body to measure. */
const HINTS: Partial<Record<Wearer['group'], string>> = {
  'not-said': 'Choose who, and the measurements of the body come next.',
  nobody: 'A wish can be said for nobody too.',
};

/** Who it is for, the body, and how it should fit. */
const Wearing = () => {
  const { record } = useGarment();
  const { first, later } = bodyPlacesFor(record.kind);
  const { body, group } = record.wearer;
  const somebody = group !== 'nobody' && group !== 'not-said';
  const hasBody = body.length > 0 || (somebody && first.length + later.length > 0);
  return (
    <>
      <WhoCard />
      {hasBody && <BodyCard />}
      <WantedCard />
      <OthersCard />
    </>
  );
};
export default Wearing;

const WhoCard = () => {
  const { record, change, readOnly } = useGarment();
  const { first, later } = bodyPlacesFor(record.kind);
  const { group } = record.wearer;
  const worn = first.length + later.length > 0;
  return (
    <Card title="Who is it for?">
      <ChoiceChips
        label="It is for"
        labelUnseen
        value={group === 'not-said' ? null : group}
        onChange={(who) =>
          change((draft) => {
            draft.wearer.group = who;
          })
        }
        hint={worn ? HINTS[group] : undefined}
        choices={GROUPS}
        readOnly={readOnly}
      />
      <TextField
        label="Name"
        value={record.wearer.name}
        onChange={(name) =>
          change((draft) => {
            draft.wearer.name = name;
          })
        }
        readOnly={readOnly}
      />
    </Card>
  );
};
