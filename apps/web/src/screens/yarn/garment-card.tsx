import { Card, MassField, NeedleField, SectionFaults, useWords } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';

/** What the garment itself is made with, and what it weighs. */
export const GarmentCard = () => {
  const { record, change } = useGarment();
  const say = useWords();
  return (
    <Card title="Your knitting">
      <div className="df-columns">
        <NeedleField
          label="Needle you use"
          path="needleMm"
          hint={`The one that the ${say('swatch')} was good on. In mm, or as US 7.`}
          valueMm={record.needleMm}
          onCommit={(mm) =>
            change((draft) => {
              if (mm === null) delete draft.needleMm;
              else draft.needleMm = mm;
            })
          }
        />
        <MassField
          label="The garment weighs"
          path="massG"
          hint="Finished, or what it is likely to weigh. It pulls the garment down when worn."
          valueG={record.massG}
          onCommit={(grams) =>
            change((draft) => {
              if (grams === null) delete draft.massG;
              else draft.massG = grams;
            })
          }
        />
      </div>
      <SectionFaults prefix="massG" />
      <SectionFaults prefix="needleMm" />
    </Card>
  );
};
