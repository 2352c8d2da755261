import type { Fault } from '@dryflat/engine/units';
import { useEffect, useRef, useState } from 'react';
import { Button, Dialog, FaultList, TextField, toast } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { go } from '../../shell/route.ts';
import { importGarment } from '../../store/index.ts';

/** Takes a garment from a file or from pasted text; says what is wrong with one that cannot be read. */
const BringIn = ({ given, onClose }: { given: string | null; onClose: () => void }) => {
  const [text, setText] = useState(given ?? '');
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const picker = useRef<HTMLInputElement>(null);
  const bring = async (from: string): Promise<void> => {
    const read = await importGarment(from);
    if (!read.ok) {
      setText(from);
      setFaults(read.faults);
      return;
    }
    onClose();
    toast(['It is on the shelf.', ...read.value.notices].join(' '));
    go(garmentHash(read.value.id));
  };
  const brought = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a dropped file is read once, on opening
  useEffect(() => {
    if (given === null || brought.current) return;
    brought.current = true;
    void bring(given);
  }, []);
  return (
    <Dialog
      title="Bring one in"
      onClose={onClose}
      foot={
        <Button look="main" isDisabled={text.trim() === ''} onPress={() => void bring(text)}>
          Bring it in
        </Button>
      }
    >
      <p>
        A garment that Dryflat saved as a file. Pick the file, drop it on the shelf, or paste its
        text here.
      </p>
      <Button icon="send" onPress={() => picker.current?.click()}>
        Pick a file
      </Button>
      <input
        ref={picker}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label="Garment file"
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) void file.text().then(bring);
        }}
      />
      {faults.length > 0 && (
        <div role="alert" className="df-stack">
          <p>
            This could not be read as a garment, for{' '}
            {faults.length === 1 ? 'one reason' : `${faults.length} reasons`}:
          </p>
          <FaultList faults={faults} ofFile />
        </div>
      )}
      <TextField
        label="Text of the file"
        value={text}
        onChange={setText}
        maxLength={5_000_000}
        long
      />
    </Dialog>
  );
};
export default BringIn;
