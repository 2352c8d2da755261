import { Card } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';

const Screen = () => {
  const { record } = useGarment();
  return (
    <Card title="Forecast">
      <p>{record.name}</p>
    </Card>
  );
};
export default Screen;
