import type { Route } from '@dryflat/engine/routes';
import { Button, Icon, toast } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useGarment } from '../../store/index.ts';
import { PLACE_LABELS } from '../result/mend-place.ts';
import { placeOfRoute, planOfRoute } from './plan-of-route.ts';

/** Makes it the plan where the record can say so, else leads to where it is worked out. */
export const TakeRoute = ({ route, onTaken }: { route: Route; onTaken: () => void }) => {
  const { record, change, readOnly, undo } = useGarment();
  const recipe = planOfRoute(route);
  const place = placeOfRoute(route);
  if (route.planned) return <p>It is the plan.</p>;
  if (recipe === null)
    return (
      place && (
        <a className="df-button" href={garmentHash(record.id, place)}>
          <Icon name={place} />
          On with it under {PLACE_LABELS[place]}
        </a>
      )
    );
  const take = (): void => {
    change(recipe);
    onTaken();
    toast('That is the plan now.', undo);
  };
  return (
    <Button look="main" isDisabled={readOnly} onPress={take}>
      Make it the plan
    </Button>
  );
};
