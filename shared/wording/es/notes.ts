import type { Variant } from '../../documents/challenge.ts';
import type { Hint, ReturnReason } from '../../room/coaching.ts';
import type { OwnSheet } from '../../room/conditions.ts';

/** Lo que la mesa dice a un equipo, como el equipo lo lee. */

const HINT: Readonly<Record<Hint, string>> = {
  'follow-the-line': 'Sigue la línea con el dedo, desde la salida hasta el final. ¿Dónde es difícil?',
  'one-goal': 'Toma primero un objetivo. Luego mira el otro.',
  'try-it': 'Prueba ahora. Mira dónde deja el robot tu línea.',
  'chart-again': 'Mira otra vez la tabla. ¿Qué dice esta marca?',
  'which-side': '¿Por qué lado llega el robot a esta marca? Mira en la tabla qué dice así.',
  'acts-later': 'Una marca hace su efecto un poco más tarde. Busca la raya azul.',
  'room-for-marks': 'Deja línea sin marcas antes y después de cada marca.',
  'round-corners': 'Haz las curvas más suaves.',
  'pass-it-on': 'Pasa el lápiz. ¿Qué ve quien está a tu lado?',
  'call-us': 'Levanta la mano. Lo miramos juntos.',
};

const RETURNED: Readonly<Record<ReturnReason, string>> = {
  'by-mistake': 'Ese llegó sin querer. Sigue y entrega otra vez.',
  'not-finished': 'Falta algo por hacer. Sigue y entrega otra vez.',
  'goals-again': 'Lee los objetivos otra vez. Luego entrega de nuevo.',
  'talk-first': 'Ven a la mesa y lo hablamos. Luego entrega de nuevo.',
};

const SHEETS: Readonly<Record<OwnSheet, string>> = {
  'as-drawn': 'Tu hoja es ahora la normal. Tu dibujo va con ella.',
  mirrored: 'Tu hoja está ahora como en un espejo. Tu dibujo va con ella: la izquierda es la derecha.',
  turned: 'Tu hoja está ahora al revés. Tu dibujo va con ella.',
};

export const notes = {
  title: 'Una nota para ti',
  hint: (hint: Hint): string => HINT[hint],
  back: (number: number) => `El número ${number} vuelve contigo`,
  returned: (reason: ReturnReason): string => RETURNED[reason],
  sheet: (variant: Variant | null): string => SHEETS[variant ?? 'as-drawn'],
  putAway: 'Guardar la nota',
  givenBack: 'devuelto, no cuenta',
};
