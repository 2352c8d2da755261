import type { Example } from '@dryflat/record/examples';
import { Suspense, use, useState } from 'react';
import { Button, kindName } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { Loading } from '../../shell/loading.tsx';
import { go } from '../../shell/route.ts';
import { shelveCopy, useView } from '../../store/index.ts';

let loading: Promise<readonly Example[]> | null = null;
const examples = (): Promise<readonly Example[]> => {
  loading ??= import('@dryflat/record/examples').then(({ EXAMPLES }) => EXAMPLES);
  return loading;
};

/** Garments of an invented valley, each with its story; opening one puts a copy on the shelf. */
export const ExampleStories = () => (
  <Suspense fallback={<Loading />}>
    <Stories />
  </Suspense>
);

const Stories = () => (
  <ul className="df-stories">
    {use(examples()).map((each) => (
      <Story key={each.slug} example={each} />
    ))}
  </ul>
);

const Story = ({ example: { slug, title, story, record } }: { example: Example }) => {
  const { words } = useView();
  const [busy, setBusy] = useState(false);
  const open = async (): Promise<void> => {
    setBusy(true);
    go(garmentHash(await shelveCopy(record, title)));
  };
  return (
    <li className="df-story">
      <h3 id={`story-${slug}`}>{title}</h3>
      <p className="df-soft">{kindName(record.kind, words)}</p>
      <p>{story}</p>
      <Button isDisabled={busy} aria-describedby={`story-${slug}`} onPress={() => void open()}>
        Open a copy
      </Button>
    </li>
  );
};
