import type { Units } from '../../documents/values.ts';

const UNIT_NAMES: Readonly<Record<Units, string>> = { cm: 'Centímetros', in: 'Pulgadas' };

/** What is set for a device and not for a room. */
export const device = {
  title: 'Este aparato',
  open: 'Idioma y medidas',
  note: 'Solo para este aparato. Puedes cambiarlo cuando quieras.',
  close: 'Cerrar',
  language: 'Idioma',
  units: 'Medidas',
  unit: (units: Units): string => UNIT_NAMES[units],
};
