import type { Doing } from '../../wire/protocol.ts';
import type { Together } from '../en/board.ts';
import { numbers } from './numbers.ts';

const { counted } = numbers;

const DOINGS: Readonly<Record<Doing, string>> = {
  drawing: 'dibuja',
  answering: 'responde',
  trying: 'prueba',
  'handed-in': 'entregado',
  away: 'sin conexión',
};

function together(figures: Together): string[] {
  const { teams, challenges, entries, teamsHandedIn, teamsMet, teamsBetter } = figures;
  if (entries === 0) return [counted(teams, 'equipo ha venido', 'equipos han venido')];
  const by =
    teamsHandedIn === teams && teams > 1
      ? `los ${teams} equipos`
      : counted(teamsHandedIn, 'equipo', 'equipos');
  const lines = [
    `${counted(entries, 'dibujo entregado', 'dibujos entregados')} por ${by}`,
    counted(challenges, 'reto jugado', 'retos jugados'),
  ];
  if (teamsMet > 0)
    lines.push(
      `${counted(teamsMet, 'equipo ha cumplido', 'equipos han cumplido')} todos los objetivos de un reto`,
    );
  if (teamsBetter > 0)
    lines.push(`${counted(teamsBetter, 'equipo ha mejorado', 'equipos han mejorado')} su primer dibujo`);
  return lines;
}

/** Time is told without hurry: whole minutes, then "el último minuto". */
function timeLeft(ms: number): string {
  if (ms <= 0) return 'se acabó el tiempo';
  const minutes = Math.ceil(ms / 60_000);
  return minutes <= 1 ? 'el último minuto' : `quedan ${minutes} minutos`;
}

export const board = {
  title: 'Harbour Lines',
  /** In the place of an emblem that a team would rather not show. */
  aTeam: 'un equipo',
  flipBack: 'Volver a la mesa',
  noRoom: {
    title: 'Aún no hay ninguna sala abierta',
    next: 'Se abre una en la mesa. Entonces aparece aquí sola.',
    which: '¿Qué sala?',
    gone: 'La sala de esta pizarra no está aquí, o ya no. Abre la pizarra desde la mesa o escribe otra sala.',
    word: 'Palabra de la sala',
    show: 'Mostrarla',
  },
  gather: {
    title: 'El malecón',
    scan: 'Escanea el código',
    or: 'o abre',
    andType: 'y escribe',
    berth: (n: number) => `amarre ${n}, libre`,
    taken: (n: number, name: string) => `amarre ${n}, ${name}`,
    calibrated: 'calibrado',
    empty: 'Hay amarres libres para ti.',
    teams: (n: number) => counted(n, 'equipo dentro', 'equipos dentro'),
  },
  brief: {
    soon: 'El próximo reto',
    goals: 'Lo que hay que cumplir',
    asked: 'Lo que se pregunta',
    seconds: (s: number) => `El robot tiene ${numbers.time(s)}.`,
    varied: 'Las mesas vecinas tienen otra hoja: mira la tuya.',
  },
  building: {
    title: 'A dibujar',
    doing: (doing: Doing) => DOINGS[doing],
    timeLeft,
    over: 'Lápices quietos',
    noLimit: 'Sin prisa',
    handedIn: (n: number, of: number) =>
      `${n} de ${counted(of, 'equipo', 'equipos')} ${numbers.plural(n, 'ha', 'han')} entregado`,
  },
  show: {
    title: 'A mirar',
    entry: (n: number) => `entrega ${n}`,
    soon: '¿Qué dibujo va primero?',
    soonNote: 'Elige tu profe.',
    loading: 'Un momento',
    heat: 'Lado a lado',
    label: (name: string, n: number) => `El robot en el dibujo de ${name}, entrega ${n}`,
    neverStarted: 'El robot no arranca.',
    pace: (name: string) => `Va ${name}`,
    /** Under a run that is not the only one: `n` ways in all, of which this has its chance. */
    oneOf: (n: number, chance: number) =>
      chance < 1
        ? `Uno de ${n} caminos: por él ${numbers.plural(chance * 20, 'va', 'van')} ${numbers.short(chance * 20, 1)} de 20 robots. Los objetivos se cumplen solo si valen en todos.`
        : `Uno de ${n} caminos. Los objetivos se cumplen solo si valen en todos.`,
    ended: (ending: string, t: number) => `${numbers.capital(ending)}, a los ${numbers.time(t)}`,
  },
  drive: {
    title: 'Robots en el papel',
    turn: (n: number) => `Turno ${n}`,
    robot: (n: number) => `robot n.º ${n}`,
    next: 'Después',
    none: 'Ahora no conduce ningún robot.',
  },
  standings: {
    title: 'Clasificación',
    points: 'puntos',
    none: 'Aún no se ha entregado ningún dibujo.',
    more: (n: number) => `y ${counted(n, 'equipo', 'equipos')} más`,
  },
  look: {
    title: 'Mira aquí',
    note: 'Manos fuera de las tabletas, por favor. Los dibujos se quedan como están.',
  },
  paused: { title: 'Una pausa', note: 'Todo espera como está, también el tiempo.' },
  close: { title: 'Todos juntos', count: 'Los robots a sus amarres, los tapones a los rotuladores.' },
  link: { away: 'Sin conexión. Vuelve sola.' },
  together,
};
