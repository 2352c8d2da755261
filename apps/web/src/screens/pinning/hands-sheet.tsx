import { useState } from 'react';
import { Button, ChoiceChips, Dialog, Notice, Select } from '../../kit/index.ts';
import { UnitSwitch } from '../../shell/unit-switch.tsx';
import type { Hands } from './hands.ts';
import { canSpeak } from './use-aloud.ts';
import { AWAKE_WORDS, type Awake } from './use-awake.ts';
import { canListen } from './use-listening.ts';

export interface HandsSheetProps {
  readonly hands: Hands;
  readonly change: (part: Partial<Hands>) => void;
  readonly voices: readonly SpeechSynthesisVoice[];
  readonly awake: Awake;
  readonly sayAgain: () => void;
  readonly onClose: () => void;
}

/** How steps are seen, heard and gone through; kept on this device. */
export const HandsSheet = (props: HandsSheetProps) => {
  const { hands, change, awake, onClose } = props;
  return (
    <Dialog title="Hands, eyes and ears" onClose={onClose}>
      <div className="df-row">
        <span>Tape in</span>
        <UnitSwitch />
      </div>
      <Aloud {...props} />
      <Listening hands={hands} change={change} />
      <OnOff
        label="Keys and clickers"
        value={hands.keys}
        onChange={(keys) => change({ keys })}
        note="Space, Enter, → or Page Down: next. ← or Page Up: back."
      />
      <p className="df-soft">{AWAKE_WORDS[awake]}</p>
    </Dialog>
  );
};

const OnOff = ({
  label,
  value,
  onChange,
  note,
}: {
  label: string;
  value: boolean;
  onChange: (on: boolean) => void;
  note: string;
}) => (
  <ChoiceChips
    label={label}
    hint={note}
    value={value ? 'on' : 'off'}
    onChange={(next) => onChange(next === 'on')}
    choices={[
      { value: 'off', label: 'Off' },
      { value: 'on', label: 'On' },
    ]}
  />
);

const Aloud = ({ hands, change, voices, sayAgain }: HandsSheetProps) => {
  if (!canSpeak()) return <p className="df-soft">This browser has no voice to read steps aloud.</p>;
  return (
    <>
      <OnOff
        label="Steps read aloud"
        value={hands.aloud}
        onChange={(aloud) => change({ aloud })}
        note={
          voices.length > 0
            ? 'By a voice of this device: nothing is sent.'
            : 'No English voice of this device was found; it may stay silent.'
        }
      />
      {hands.aloud && voices.length > 1 && (
        <Select
          label="Voice"
          value={hands.voice || voices[0]!.voiceURI}
          onChange={(voice) => change({ voice })}
          options={voices.map(({ voiceURI, name }) => ({ value: voiceURI, label: name }))}
        />
      )}
      {hands.aloud && (
        <div>
          <Button onPress={sayAgain}>Say this step</Button>
        </div>
      )}
    </>
  );
};

/** The microphone goes on only after it is said where the sound may go. */
const Listening = ({ hands, change }: Pick<HandsSheetProps, 'hands' | 'change'>) => {
  const [asking, setAsking] = useState(false);
  if (!canListen()) return <p className="df-soft">This browser cannot be told “next” by voice.</p>;
  return (
    <>
      <OnOff
        label="Told by voice"
        value={hands.listening}
        onChange={(on) => {
          if (on) setAsking(true);
          else change({ listening: false });
        }}
        note="Say “next”, “back” or “again”. Off until you say so; it needs the network in most browsers."
      />
      {asking && !hands.listening && (
        <Notice tone="unsure">
          <p>
            Many browsers send what the microphone hears to a server of their maker to make words of
            it, everything said in the room while it is on. Dryflat itself sends and keeps nothing.
          </p>
          <div className="df-row">
            <Button
              onPress={() => {
                setAsking(false);
                change({ listening: true });
              }}
            >
              Listen all the same
            </Button>
            <Button look="quiet" onPress={() => setAsking(false)}>
              Leave it off
            </Button>
          </div>
        </Notice>
      )}
    </>
  );
};
