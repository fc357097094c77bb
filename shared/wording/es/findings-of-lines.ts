import type { Finding, FindingVariant, RuleId } from '../../documents/verdict.ts';
import type { Said, Values } from '../en/finding-values.ts';
import { least, measured, most, said, turned } from './finding-values.ts';
import { numbers } from './numbers.ts';

const { angle } = numbers;

const CORNER: Readonly<Record<Finding['severity'], (v: Values) => string>> = {
  stops: (v) => `Aquí el robot pierde la línea. Abre la esquina a ${angle(v.allowed)} o más.`,
  'may-stop': (v) =>
    `El robot puede creer que es un cruce. Pasa, pero aquí gasta la marca de girar que lleva guardada. Desde ${angle(v.allowed)} no hay peligro.`,
  untidy: (v) => `El robot pasa. Le cuesta menos si abres la esquina a ${angle(v.allowed)} o más.`,
};

const ARMS: Readonly<Partial<Record<FindingVariant, string>>> = {
  junction: 'Cruces muy juntos',
  corner: 'Esquina junto a un cruce',
};

/** What is said of lines, and of how they meet. */
export const LINES = {
  'R-line-width': (v) =>
    v.variant === 'thin'
      ? said('Línea muy fina', measured(v), `El robot lee mal las marcas en ella: hazla de ${least(v)}.`)
      : said('Línea muy gruesa', measured(v), `El robot puede creer que es un cruce: hazla de ${most(v)}.`),
  'R-corner': (v) => said('Esquina cerrada', turned(v), CORNER[v.severity](v)),
  'R-curve-radius': (v) =>
    said(
      'Curva cerrada',
      measured(v),
      `El robot se puede salir de la línea: la curva pide un radio de ${least(v)}.`,
    ),
  'R-clearance': (v) =>
    said(
      'Líneas muy juntas',
      measured(v),
      `El robot puede ver las dos a la vez: deja ${least(v)} de centro a centro.`,
    ),
  'R-junction-angle': (v) =>
    said(
      'Cruce estrecho',
      turned(v),
      `El robot puede ${v.severity === 'untidy' ? 'confundir estos dos caminos' : 'ver estos dos caminos como uno'}: ábrelos al menos ${angle(v.allowed)}.`,
    ),
  'R-junction-arms': (v) => {
    const title = ARMS[v.variant ?? 'end'];
    return title
      ? said(
          title,
          measured(v),
          `El robot puede creer que los dos son uno: deja ${least(v)} de línea entre ellos.`,
        )
      : said(
          'Camino corto',
          measured(v),
          `El robot puede no verlo, o pararse donde acaba: desde un cruce pide ${least(v)}.`,
        );
  },
  'R-open-junction': (v) => ({
    title: 'Queda a la suerte',
    sentence: `El robot elige solo tantas veces que hay más de ${v.allowed} recorridos. Decide primero este cruce.`,
  }),
} satisfies Partial<{ readonly [Rule in RuleId]: (values: Values) => Said }>;
