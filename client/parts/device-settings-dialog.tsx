import { Languages } from 'lucide-react';
import { useId, useState } from 'react';
import { create } from 'zustand';
import { LOCALES, UNITS } from '../../shared/documents/values.ts';
import { Button } from './button.tsx';
import { changeDevice, type DeviceSettings, INKS, TEXT_SIZES, useDevice, VOICES } from './device-settings.ts';
import { Dialog } from './dialog.tsx';
import { Icon } from './icon.tsx';
import { LANGUAGE_NAMES } from './languages.ts';
import { Notice } from './notice.tsx';
import { useWords } from './use-words.ts';
import './device-settings.css';

const useDialog = create<{ readonly open: boolean }>()(() => ({ open: false }));
export const openDeviceSettings = (): void => useDialog.setState({ open: true });

/** How this device speaks and shows things. Each page has it once; buttons and keys open it. */
export function DeviceSettingsDialog() {
  const { device } = useWords();
  const { language, units, inks, text, voice } = useDevice();
  const { open } = useDialog();
  const [missing, setMissing] = useState(false);
  const choose = async (change: Partial<DeviceSettings>) => setMissing(!(await changeDevice(change)));
  const onClose = () => useDialog.setState({ open: false });
  return (
    <Dialog open={open} title={device.title} closeWord={device.close} onClose={onClose}>
      <div className="device-settings">
        <p>{device.note}</p>
        {missing && (
          <Notice tone="stops" role="alert">
            {device.missing}
          </Notice>
        )}
        <Choice
          name={device.language}
          values={LOCALES}
          chosen={language}
          say={(locale) => <span lang={locale}>{LANGUAGE_NAMES[locale]}</span>}
          onChoose={(chosen) => void choose({ language: chosen })}
        />
        <Choice
          name={device.units}
          values={UNITS}
          chosen={units}
          say={device.unit}
          onChoose={(chosen) => void choose({ units: chosen })}
        />
        <Choice
          name={device.inks}
          note={device.inksNote}
          values={INKS}
          chosen={inks}
          say={device.inksAre}
          onChoose={(chosen) => void choose({ inks: chosen })}
        />
        <Choice
          name={device.text}
          values={TEXT_SIZES}
          chosen={text}
          say={device.textSize}
          onChoose={(chosen) => void choose({ text: chosen })}
        />
        <Choice
          name={device.voice}
          values={VOICES}
          chosen={voice}
          say={device.voiceIs}
          onChoose={(chosen) => void choose({ voice: chosen })}
        />
      </div>
    </Dialog>
  );
}

interface ChoiceProps<V extends string | number> {
  readonly name: string;
  readonly note?: string;
  readonly values: readonly V[];
  readonly chosen: V;
  readonly say: (value: V) => React.ReactNode;
  readonly onChoose: (value: V) => void;
}

/** One of a few, each with a place of its own to tap. */
function Choice<V extends string | number>({ name, note, values, chosen, say, onChoose }: ChoiceProps<V>) {
  const noteId = useId();
  return (
    <fieldset aria-describedby={note && noteId}>
      <legend>{name}</legend>
      {values.map((value) => (
        <label key={value}>
          <input
            type="radio"
            name={name}
            value={value}
            checked={value === chosen}
            onChange={() => onChoose(value)}
          />
          {say(value)}
        </label>
      ))}
      {note && (
        <p id={noteId} className="device-settings-note">
          {note}
        </p>
      )}
    </fieldset>
  );
}

export interface DeviceSettingsButtonProps {
  readonly className?: string;
  /** The key that does the same, where the page listens for one. */
  readonly shortcut?: string;
}

/** Its icon says what it is to those who cannot read the page as it stands. */
export function DeviceSettingsButton(props: DeviceSettingsButtonProps) {
  const { device } = useWords();
  return (
    <Button
      {...props}
      look="quiet"
      icon={<Icon of={Languages} size={24} />}
      aria-label={device.open}
      title={device.open}
      aria-haspopup="dialog"
      onClick={openDeviceSettings}
    />
  );
}
