import type { Finding, RuleId } from '../../documents/verdict.ts';
import type { Said, Values } from '../en/finding-values.ts';
import { least, measured, said, turned } from './finding-values.ts';
import { numbers } from './numbers.ts';

const { length, angle } = numbers;

const OVER_GAP: Readonly<Record<Finding['severity'], string>> = {
  stops: 'El robot no encuentra la línea al otro lado.',
  'may-stop': 'Puede que el robot lo pase.',
  untidy: 'El robot lo pasa.',
};

/** What is said of a drawing on its sheet. */
export const ON_SHEET = {
  'R-margin': (v) =>
    v.measured < 0
      ? said(
          'Fuera del papel',
          length(-v.measured),
          `La línea sale del papel: deja ${least(v)} hasta el borde.`,
        )
      : said(
          'Cerca del borde',
          measured(v),
          `Una rueda puede salirse del papel: deja ${least(v)} hasta el borde.`,
        ),
  'R-loose-end': (v) => {
    if (v.variant === 'gap') {
      return said(
        'Hueco en la línea',
        measured(v),
        `Hay un hueco de ${length(v.measured)} en la línea. ${OVER_GAP[v.severity]}`,
      );
    }
    if (v.variant === 'edge') {
      return said(
        'Rápido hacia el borde',
        measured(v),
        `El robot va rápido donde acaba la línea: deja ${least(v)} hasta el borde del papel.`,
      );
    }
    return { title: 'Cabo suelto', sentence: 'Si el robot va por aquí, se para donde acaba la línea.' };
  },
  'R-keep-out': (v) =>
    v.variant === 'near'
      ? said(
          'Cerca de zona prohibida',
          measured(v),
          `Un lado del robot entraría: deja ${least(v)} entre la línea y la zona prohibida.`,
        )
      : said(
          'Línea en zona prohibida',
          length(v.measured),
          'El robot entraría aquí: lleva la línea por fuera de la zona prohibida.',
        ),
  'R-given-lines': (v) =>
    v.variant === 'gap'
      ? said(
          'Hueco de la hoja cerrado',
          length(v.measured),
          'El hueco es de la hoja: las líneas de la hoja se quedan como están.',
        )
      : said(
          'Línea sobre la de la hoja',
          length(v.measured),
          'Las líneas de la hoja se quedan como están: únete a ellas, pero no las repases.',
        ),
  'R-ink-budget': (v) =>
    said('Demasiada línea', measured(v), `En este reto puedes dibujar ${length(v.allowed)} de línea.`),
  'R-mark-budget': (v) =>
    said(
      'Demasiadas marcas',
      String(v.measured),
      `En este reto puedes usar ${numbers.counted(v.allowed, 'marca', 'marcas')}.`,
    ),
  'R-mark-box': (v) =>
    said(
      'Marca fuera del recuadro',
      length(v.measured),
      `Esta marca se pasa ${length(v.measured)}: aquí las marcas van enteras en un recuadro.`,
    ),
  'R-start-on-line': (v) => {
    if (v.variant === 'across') {
      return said(
        'Línea cruzada en la salida',
        turned(v),
        `El robot puede salir mal: la línea sale hacia donde mira el robot, con ${angle(v.allowed)} como mucho.`,
      );
    }
    if (v.allowed === 0) {
      return {
        title: 'Salida sin línea',
        sentence: 'Desde su amarre el robot no ve ninguna línea: empiézala bajo sus sensores.',
      };
    }
    return said(
      'Salida sin línea',
      measured(v),
      `Desde su amarre el robot no ve ninguna línea: pásala a ${length(v.allowed)} de sus sensores o menos.`,
    );
  },
  'R-finish-reachable': (v) =>
    Number.isFinite(v.measured) && v.measured > v.allowed
      ? said(
          'Final sin alcanzar',
          measured(v),
          `La línea tiene que llegar a ${length(v.allowed)} del centro del amarre o menos.`,
        )
      : {
          title: 'Final sin alcanzar',
          sentence: 'Ninguna línea lleva desde la salida hasta el amarre del final.',
        },
} satisfies Partial<{ readonly [Rule in RuleId]: (values: Values) => Said }>;
