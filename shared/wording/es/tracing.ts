import type { PartName } from '../en/tracing.ts';
import { numbers } from './numbers.ts';

/** The drawing true to size on the glass, with paper on top. */
export const tracing = {
  open: 'Calcarlo sobre la pantalla',
  title: 'Mesa para calcar',
  close: 'Cerrar',
  back: 'Atrás',
  card: {
    title: '¿Cómo de grande es esta pantalla?',
    how: 'Pon una tarjeta sobre la figura. Ha de ser como una del banco: 85,6 mm de ancho (ISO/IEC 7810).',
    fit: 'Haz la figura tan ancha como la tarjeta.',
    width: 'Ancho de la figura',
    pixels: (px: number) => `${numbers.short(px, 1)} píxeles`,
    less: 'Más pequeña',
    more: 'Más grande',
    use: 'Es igual',
  },
  before: {
    title: 'Antes de calcar',
    how: [
      'Pon la pantalla clara y la sala oscura.',
      'Limpia la pantalla. Pon encima papel fino. Pégalo por el borde con cinta.',
      'Deja libre la franja de abajo. Ahí se quita el bloqueo.',
      'Dibuja también las cruces finas. Ahí se unen las partes.',
    ],
    cautionTitle: 'Cuida la pantalla',
    cautions: [
      'Aprieta poco. El vidrio se puede romper.',
      'Calca con lápiz. La tinta que pasa el papel mancha la pantalla.',
      'Rellena luego con los rotuladores, sobre la mesa.',
      'Nada de bebidas cerca.',
      'Limpia la pantalla al final, con un paño seco y suave. Lo que dice su fabricante va primero.',
    ],
    by: 'Práctica común, sin fuente.',
    other: 'El zoom o la pantalla no es como con la tarjeta. Pon el zoom como antes, o mide otra vez.',
    again: 'Medir otra vez con la tarjeta',
    start: 'Ponerlo en la pantalla',
  },
  part: ({ number, count, column, row }: PartName): string =>
    count === 1 ? 'La hoja entera' : `Parte ${number} de ${count}: columna ${column}, fila ${row}`,
  previous: 'Parte anterior',
  next: 'Parte siguiente',
  lock: 'Bloquear la pantalla',
  locked: 'Bloqueada: ya puedes calcar.',
  hold: 'Mantén 2 segundos para desbloquear',
  holdKey: 'Con teclas: mantén Esc.',
  ruler: '100 mm: compruébalo',
};
