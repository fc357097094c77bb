import type { Units } from '../../documents/values.ts';

const UNIT_NAMES: Readonly<Record<Units, string>> = { cm: 'Centímetros', in: 'Pulgadas' };

/** What is set for a device and not for a room. */
export const device = {
  title: 'Este aparato',
  open: 'Idioma, medidas y letra',
  note: 'Solo para este aparato. Puedes cambiarlo cuando quieras.',
  close: 'Cerrar',
  noNames: 'Sin nombres de personas, por favor.',
  language: 'Idioma',
  missing: 'Este idioma no se pudo traer. Prueba otra vez cuando responda el servidor.',
  units: 'Medidas',
  unit: (units: Units): string => UNIT_NAMES[units],
  inks: 'Colores de las tintas',
  inksAre: (are: 'kit' | 'other'): string => (are === 'kit' ? 'como en el kit' : 'ámbar, azul, marrón'),
  inksNote:
    'Los otros colores son para la pantalla y hasta tres tintas. Las letras y las tramas no cambian. En papel usa los rotuladores de tu kit.',
  text: 'Tamaño de la letra',
  textSize: (percent: number): string => `${percent} %`,
  voice: 'Leer en voz alta',
  voiceIs: (is: 'on' | 'off'): string => (is === 'on' ? 'con la voz de este aparato' : 'apagado'),
};
