import type { PaperPoint } from '../../geometry/units.ts';
import { numbers } from './numbers.ts';

/** A place on the printed grid, whose broad lines are 5 cm apart: in cm whatever a device speaks of. */
const place = ({ x, y }: PaperPoint): string =>
  `${numbers.short(x / 10, 2)} across, ${numbers.short(y / 10, 2)} down`;

export interface Told {
  readonly kind: 'begin' | 'straight' | 'bow' | 'mark';
  readonly at?: PaperPoint;
  readonly from?: PaperPoint;
  readonly over?: PaperPoint;
  readonly to?: PaperPoint;
}

const at = (p: PaperPoint | undefined): string => (p ? place(p) : '');

/** How a drawing gets onto paper without a printer. */
export const toPaper = {
  file: 'To paper',
  saved: 'The file is saved.',
  readOut: 'Read it out for paper',
  how: 'One reads, one draws on the grid. Count in cm from the top left corner: across first, then down.',
  step: (step: Told): string => {
    switch (step.kind) {
      case 'begin':
        return `Put the pen at ${at(step.at)}.`;
      case 'straight':
        return `Straight to ${at(step.to)}.`;
      case 'bow':
        return `A bow over ${at(step.over)} to ${at(step.to)}.`;
      case 'mark':
        return `Bands from ${at(step.from)} to ${at(step.to)}.`;
    }
  },
};
