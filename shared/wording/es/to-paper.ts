import type { PaperPoint } from '../../geometry/units.ts';
import type { Told } from '../en/to-paper.ts';
import { numbers } from './numbers.ts';

/** A place on the printed grid, whose broad lines are 5 cm apart: in cm whatever a device speaks of. */
const place = ({ x, y }: PaperPoint): string =>
  `${numbers.short(x / 10, 2)} a la derecha, ${numbers.short(y / 10, 2)} abajo`;

const at = (p: PaperPoint | undefined): string => (p ? place(p) : '');

/** How a drawing gets onto paper without a printer. */
export const toPaper = {
  file: 'Al papel',
  saved: 'El archivo está guardado.',
  readOut: 'Leerlo para el papel',
  how: 'Uno lee, otro dibuja en la cuadrícula. Cuenta en cm desde la esquina de arriba a la izquierda: primero a la derecha, luego abajo.',
  step: (step: Told): string => {
    switch (step.kind) {
      case 'begin':
        return `Pon el lápiz en ${at(step.at)}.`;
      case 'straight':
        return `Recto hasta ${at(step.to)}.`;
      case 'bow':
        return `Un arco sobre ${at(step.over)} hasta ${at(step.to)}.`;
      case 'mark':
        return `Bandas desde ${at(step.from)} hasta ${at(step.to)}.`;
    }
  },
};
