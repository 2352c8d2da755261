import type { Wearer } from '@dryflat/record';
import { Card, ChoiceChips, SectionFaults, TextField } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { BodyCard } from './body-card.tsx';
import { bodyPlacesFor } from './body-places.ts';
import { WantedCard } from './wanted-card.tsx';
import './wearer.css';

const GROUPS: readonly { value: Wearer['group']; label: string }[] = [
  { value: 'woman', label: 'A woman' },
  { value: 'man', label: 'A man' },
  { value: 'child', label: 'A child' },
  { value: 'baby', label: 'A baby' },
  { value: 'nobody', label: 'Nobody: a blanket, a gift to come' },
];

/** Shown beside the field that it is about, so not once more at the foot. */
const SHOWN_IN_PLACE = ['missing-span', 'range-upside-down', 'doubt-ease-without-body'];

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
      <SectionFaults prefix="wearer." except={SHOWN_IN_PLACE} />
    </>
  );
};
export default Wearing;

const WhoCard = () => {
  const { record, change, readOnly } = useGarment();
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
        choices={GROUPS}
        readOnly={readOnly}
      />
      <TextField
        label="Name"
        hint="Only you see it."
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
