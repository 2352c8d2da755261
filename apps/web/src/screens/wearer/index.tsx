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

/** Who it is for, the body, and how it should fit. */
const Wearing = () => {
  const { record } = useGarment();
  const { first, later } = bodyPlacesFor(record.kind);
  const hasBody =
    record.wearer.body.length > 0 ||
    (record.wearer.group !== 'nobody' && first.length + later.length > 0);
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
  const hidesBody = record.wearer.group === 'nobody' && first.length + later.length > 0;
  return (
    <Card title="Who is it for?">
      <ChoiceChips
        label="It is for"
        labelUnseen
        value={record.wearer.group}
        onChange={(group) =>
          change((draft) => {
            draft.wearer.group = group;
          })
        }
        hint={
          hidesBody
            ? 'Choose who, and the measurements of the body come next. A wish can be said for nobody too.'
            : undefined
        }
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
