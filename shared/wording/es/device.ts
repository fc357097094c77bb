import type { Units } from '../../documents/values.ts';

const UNIT_NAMES: Readonly<Record<Units, string>> = { cm: 'Centímetros', in: 'Pulgadas' };

/** What is set for a device and not for a room. */
export const device = {
  title: 'Este aparato',
  open: 'Idioma, medidas y letra',
  note: 'Solo para este aparato. Puedes cambiarlo cuando quieras.',
  close: 'Cerrar',
  language: 'Idioma',
  missing: 'Este idioma no se pudo traer. Prueba otra vez cuando responda el servidor.',
  units: 'Medidas',
  unit: (units: Units): string => UNIT_NAMES[units],
  text: 'Tamaño de la letra',
  textSize: (percent: number): string => `${percent} %`,
  voice: 'Leer en voz alta',
  voiceIs: (is: 'on' | 'off'): string => (is === 'on' ? 'con la voz de este aparato' : 'apagado'),
};
