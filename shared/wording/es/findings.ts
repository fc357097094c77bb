import type { Finding, Remedy, RuleId } from '../../documents/verdict.ts';
import type { Said, Values } from '../en/finding-values.ts';
import { LINES } from './findings-of-lines.ts';
import { MARKS } from './findings-of-marks.ts';
import { ON_SHEET } from './findings-of-sheet.ts';

const SAID: { readonly [Rule in RuleId]: (values: Values) => Said } = { ...LINES, ...MARKS, ...ON_SHEET };

const REMEDY: Readonly<Record<Remedy, string>> = {
  'blunt-corner': 'Abre más la esquina o redondéala.',
  'widen-curve': 'Dibuja la curva más abierta.',
  'set-width': 'Dibuja la línea con el ancho de siempre.',
  'move-apart': 'Separa las líneas.',
  'square-junction': 'Haz que las líneas se crucen más derechas.',
  'lengthen-arm': 'Haz este camino más largo o quítalo.',
  'make-room': 'Deja más línea entre los dos.',
  'move-inside': 'Aparta la línea del borde.',
  'slow-down': 'Frena antes de que acabe la línea.',
  'close-gap': 'Cierra el hueco.',
  'lead-on': 'Sigue la línea o quita este trozo.',
  'go-round': 'Lleva la línea por fuera.',
  'leave-given': 'Quita esta línea o dibújala al lado.',
  'use-less-line': 'Haz el camino más corto.',
  'remove-mark': 'Quita una marca.',
  'slide-mark': 'Desliza la marca por la línea.',
  'slide-or-slow-down': 'Desliza la marca por la línea o frena antes de ella.',
  'into-box': 'Lleva la marca a un recuadro.',
  'add-bands': 'Añade una banda.',
  'remove-bands': 'Quita una banda.',
  'even-bands': 'Haz las bandas iguales y sin huecos.',
  'lighter-ink': 'Elige una marca de tintas más claras.',
  'choose-mark': 'Elige una marca de la tabla.',
  'choose-way': 'Elige una marca para un camino que exista.',
  'decide-junction': 'Dibuja antes una marca que diga qué camino tomar.',
  'lead-out': 'Saca la línea del amarre hacia donde mira el robot.',
  'draw-from-berth': 'Empieza la línea en el amarre de salida.',
  'draw-to-berth': 'Lleva la línea hasta el amarre del final.',
};

export const findings = {
  said: (finding: Omit<Finding, 'id' | 'place' | 'remedy'>): Said =>
    SAID[finding.rule]({
      measured: finding.measured ?? 0,
      allowed: finding.allowed ?? 0,
      variant: finding.variant,
      severity: finding.severity,
    }),
  /** What to do about it, as one sentence; undefined where the rule knows nothing. */
  remedy: (finding: Finding): string | undefined => finding.remedy && REMEDY[finding.remedy.code],
};
