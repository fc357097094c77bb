import type { Units } from '../../documents/values.ts';

const UNIT_NAMES: Readonly<Record<Units, string>> = { cm: 'Centimetres', in: 'Inches' };

/** What is set for a device and not for a room. */
export const device = {
  title: 'This device',
  open: 'Language, lengths and text',
  note: 'Only for this device. You can change it at any time.',
  close: 'Close',
  noNames: 'No names of people, please.',
  language: 'Language',
  missing: 'This language could not be fetched. Try again when the server answers.',
  units: 'Lengths',
  unit: (units: Units): string => UNIT_NAMES[units],
  inks: 'Colours of inks',
  inksAre: (are: 'kit' | 'other'): string => (are === 'kit' ? 'as in the kit' : 'amber, blue, brown'),
  inksNote:
    'Other colours are for the screen and for up to three inks. Letters and patterns stay. On paper use the pens of your kit.',
  text: 'Size of text',
  textSize: (percent: number): string => `${percent} %`,
  voice: 'Reading aloud',
  voiceIs: (is: 'on' | 'off'): string => (is === 'on' ? 'with the voice of this device' : 'off'),
};
