import type { WallWish } from '../../room/state.ts';

/** What a team has to agree on among itself: who does what, and whether it wants to be seen. */

const ROLES = { pen: 'lápiz', chart: 'tabla', lookout: 'vigía' } as const;
const SEATS = ['izquierda', 'centro', 'derecha'] as const;

const WISHES: Readonly<Record<WallWish, string>> = {
  shown: 'Sí, con nuestro emblema',
  'no-emblem': 'Sí, sin nuestro emblema',
  'not-at-all': 'En la pared no, por favor',
};

export const together = {
  roles: 'Quién hace qué',
  begin: 'El lápiz dibuja, la tabla nombra las marcas, el vigía dice qué hará el robot.',
  passOn: 'Pasa tu papel al asiento de al lado.',
  role: (role: keyof typeof ROLES): string => ROLES[role],
  seat: (seat: number): string => SEATS[seat] ?? '',
  pair: 'En pareja, uno tiene la tabla y es también el vigía.',
  wall: '¿Pueden estar nuestros dibujos en la pared?',
  wish: (wish: WallWish): string => WISHES[wish],
};
