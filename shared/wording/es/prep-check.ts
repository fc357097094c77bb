import type { PrepCheck } from '../../prep/prep-check.ts';

const CHECKS: Readonly<Record<PrepCheck, string>> = {
  pages: 'El servidor responde y sus páginas están listas',
  address: 'Las tabletas tienen una dirección que abrir',
  tablet: 'Una tableta llega al servidor',
  kit: 'El kit está elegido',
  charger: 'El cargador está vigilado mientras se cargue algo',
  robots: 'Los robots están cargados, encendidos y contados',
  paper: 'Las hojas están impresas al 100 %, y la regla mide 100 mm',
  tables: 'Rotuladores y cinta a mano, hojas a 10 cm del borde de la mesa, los pasos libres',
};

/** The desk's five minutes before a lesson. */
export const prepCheck = {
  leaf: 'Cinco minutos',
  title: 'Cinco minutos antes',
  how: 'Tocar una línea o pulsar su número. Lo que la mesa ve por sí sola se marca solo.',
  said: (check: PrepCheck): string => CHECKS[check],
  /** What the desk knows of a line, or what would tick it. */
  serves: 'Esta página ha venido de allí.',
  silent: 'El servidor no responde. Mirar si sigue en marcha.',
  host: (host: string): string => `Abren ${host}.`,
  noHost: 'Este ordenador aún no está en ninguna red. Conectarlo a la de las tabletas.',
  tryTablet: (page: string): string => `Abrir ${page} en una tableta.`,
  kit: (name: string): string => `Es ${name}.`,
  seen: 'visto por la mesa',
  done: (n: number, of: number): string => `${n} de ${of} hechas`,
  ready: 'Todo está listo.',
  open: 'Abrir la sala',
  anyway: 'La sala se abre igual: lo que falta se puede hacer después.',
  kept: 'Este navegador recuerda las marcas hasta el final del día.',
  again: 'Empezar de nuevo',
};
