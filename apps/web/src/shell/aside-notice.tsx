import { useState } from 'react';
import { Button, Notice } from '../kit/index.ts';
import { dropAside, exportAside, useAside } from '../store/index.ts';
import { saveFile } from './save-file.ts';

/** Says what could not be read of a garment, or of the shelf: it can be saved as a file, and removed after that. */
const AsideNotice = ({ garment }: { garment: string | null }) => {
  const count = useAside(garment);
  const [saved, setSaved] = useState(false);
  const save = (): void => {
    const { fileName, text } = exportAside(garment);
    saveFile(fileName, text);
    setSaved(true);
  };
  return (
    <Notice tone="unsure">
      <div className="df-stack">
        <p>
          {count === 1 ? 'One entry' : `${count} entries`} of{' '}
          {garment === null ? 'this shelf' : 'this garment'} could not be read and{' '}
          {count === 1 ? 'is' : 'are'} left out.
        </p>
        <div className="df-row">
          <Button icon="fetch" onPress={save}>
            Save {count === 1 ? 'it' : 'them'} as a file
          </Button>
          {saved && (
            <Button icon="bin" onPress={() => void dropAside(garment)}>
              Remove {count === 1 ? 'it' : 'them'} here
            </Button>
          )}
        </div>
      </div>
    </Notice>
  );
};
export default AsideNotice;
