import { isMistaken, type MistakenReason, type Reason, type TrueReason } from '../../documents/reason.ts';

/** Why a run went as it went. Read by children: short sentences, the robot is "él". */

const TRUE: Readonly<Record<TrueReason, string>> = {
  'no-line-in-berth': 'Al empezar no tenía ninguna línea debajo.',
  'line-lost': 'Perdió la línea en un sitio.',
  'line-ends': 'La línea acaba antes del objetivo.',
  'off-paper': 'Se salió por el borde del papel.',
  'time-up': 'Necesitaba más tiempo del que había.',
  'mark-overlooked': 'Pasó sobre una marca y no la leyó.',
  'mark-unknown': 'Leyó una marca que no está en la tabla.',
  'left-to-luck': 'En un cruce ninguna marca le dijo qué camino tomar.',
  'taken-for-junction': 'Tomó una esquina cerrada por un cruce.',
  'met-from-behind': 'Encontró una marca desde el otro lado, donde dice otra cosa.',
  'falls-short': 'Hizo todo lo dibujado, pero eso aún no es todo lo que se pide.',
  'some-robots-stray': 'Los robots son algo distintos. En este sitio algunos dejan la línea.',
  'all-as-drawn': 'Siguió la línea e hizo lo que dice cada marca.',
};

const MISTAKEN: Readonly<Record<MistakenReason, { readonly said: string; readonly but: string }>> = {
  'sees-the-sheet': {
    said: 'Miró toda la hoja y eligió su camino.',
    but: 'Sus cinco sensores solo ven lo que está justo debajo de su barra.',
  },
  'knows-the-wish': {
    said: 'Sabe adónde tiene que ir y ayudó un poco.',
    but: 'No sabe nada del objetivo. Solo sigue la línea y las marcas.',
  },
  'acts-at-once': {
    said: 'Una marca actúa justo donde está.',
    but: 'Primero lee la marca y actúa un poco después, en la raya azul.',
  },
  'same-from-both-sides': {
    said: 'Una marca dice lo mismo desde los dos lados.',
    but: 'Leídos desde el otro lado, los colores vienen en otro orden.',
  },
  'first-colour-counts': {
    said: 'Solo cuenta el primer color de una marca.',
    but: 'Lee todos los colores de una marca, en su orden.',
  },
  'shortest-way': {
    said: 'Siempre toma el camino más corto.',
    but: 'No sabe qué camino es más corto. Sin marca toma cualquiera.',
  },
  'got-tired': {
    said: 'Estaba cansado o de mal humor.',
    but: 'Un robot no tiene humor. Algo en el papel hizo que pasara.',
  },
};

export const reasons = {
  /** As one of three to choose from. */
  said: (reason: Reason): string => (isMistaken(reason) ? MISTAKEN[reason].said : TRUE[reason]),
  /** Why a mistaken one can't be. */
  but: (reason: MistakenReason): string => MISTAKEN[reason].but,
};
