import type { Weather } from '../../documents/outlook.ts';
import { numbers } from './numbers.ts';
import { outlook } from './outlook.ts';

const { counted } = numbers;

/** What the desk says of who is in a room and on which tablet, and of taking things back. */

export const undo = {
  back: 'Deshacer',
  removed: (team: string) => `${team} está fuera de la sala.`,
  freed: (team: string) => `La tableta de ${team} descansa.`,
  noteSent: (team: string) => `La nota está con ${team}.`,
  returned: (team: string, entry: number) => `La entrega ${entry} vuelve a ${team}.`,
  unqueued: (title: string) => `«${title}» ya no está en la cola.`,
  weather: (weather: Weather): string => `Desde ahora los robots van con ${outlook.weather(weather)}.`,
  teamWeather: (team: string, weather: Weather): string =>
    `Desde ahora los robots van con ${outlook.weather(weather)} para ${team}.`,
  sheet: (team: string, sheet: string) => `La hoja de ${team} está ahora ${sheet}, y su dibujo también.`,
  ended: 'Se ha terminado de dibujar.',
  checkEnded: 'Las preguntas finales han terminado.',
  lateTaken: (n: number) =>
    n === 1
      ? 'La entrega tardía cuenta.'
      : `${counted(n, 'entrega tardía cuenta', 'entregas tardías cuentan')}.`,
  lateLeft: (n: number) =>
    n === 1
      ? 'La entrega tardía no cuenta.'
      : `${counted(n, 'entrega tardía no cuenta', 'entregas tardías no cuentan')}.`,
};

/** What was handed in after the time. */
export const late = {
  waiting: (n: number) =>
    n === 1
      ? 'Una entrega llegó tarde y aún no cuenta'
      : counted(n, 'entrega llegó tarde y aún no cuenta', 'entregas llegaron tarde y aún no cuentan'),
  takeAll: (n: number): string => (n === 1 ? 'Contarla' : 'Contarlas'),
  take: 'Contarla',
  leave: 'No contarla',
  counts: 'tarde, cuenta',
  notYet: 'tarde, no cuenta',
};

export const pausing = {
  pause: 'Pausa',
  goOn: 'Seguir',
  on: 'Todo está en pausa: las tabletas descansan y el tiempo no corre.',
};

export const seats = {
  of: (team: string) => `${team}: equipo y tableta`,
  open: 'Equipo y tableta',
  tablet: 'Otra tableta',
  tabletHow:
    'El equipo sigue en otra tableta, con su dibujo y sus puntos. La tableta que tiene ahora descansa desde entonces.',
  code: 'Crear un código',
  codeAgain: 'Crear otro código',
  making: 'Un momento',
  codeHow:
    'En la otra tableta: escanear esto, o abrir la dirección y escribir el código en lugar de la palabra de la sala.',
  codeWord: 'Código',
  codeUntil: (when: string) => `Vale una vez, hasta las ${when}.`,
  moved: 'Ahora el sitio lo tiene otra tableta.',
  rest: 'La tableta que tiene ahora',
  restHow: 'Si esa tableta está en malas manos, puede descansar ya. Emblema, dibujo y puntos se quedan.',
  free: 'Que descanse',
  isFree: 'La tableta de este equipo descansa. El sitio puede ir a otra tableta o volver a esta.',
  keep: 'Devolver el sitio a su tableta',
  remove: 'Fuera de la sala',
  removeHow:
    'Para un equipo que está dos veces o que no es de aquí. Sus dibujos se guardan, pero no cuentan, y puede volver.',
  removeGo: 'Sacar al equipo',
  removedTitle: 'Fuera de la sala',
  putBack: 'Volver a meter',
  putBackTeam: (team: string) => `Volver a meter a ${team}`,
};

export const links = {
  title: 'Enlaces de mesa',
  note: 'Un enlace para cada docente. Una mesa solo ve las salas que se abrieron con ella. Sin nombres, por favor: cada enlace tiene su propia palabra.',
  none: 'Aún no hay ningún enlace.',
  make: 'Crear un enlace de mesa',
  making: 'Un momento',
  made: (word: string) => `El enlace «${word}»`,
  once: 'Se muestra solo esta vez. Conviene darlo ya; quien lo tiene, tiene esa mesa.',
  address: (word: string) => `Dirección del enlace «${word}»`,
  copy: 'Copiar el enlace',
  copied: 'Copiado',
  row: (when: string) => `creado el ${when}`,
  revoke: 'Anular',
  revokeThis: (word: string) => `Anular el enlace «${word}»`,
  revoked: 'anulado: las mesas abiertas con él están cerradas',
  revokedDesk:
    'anulado: las mesas abiertas con él están cerradas, y sus retos y kits se borran en diez segundos',
  giveBackThis: (word: string) => `Devolver el enlace «${word}»`,
  loading: 'Buscando enlaces',
  substitute: 'Un enlace para quien sustituye',
  substituteNote: 'Abre solo esta sala y ninguna otra.',
  substituteNone: 'Aún no hay ningún enlace a esta sala.',
  substituteMake: 'Crear un enlace a esta sala',
};

export const keeping = {
  more: 'Guardar, pasar, borrar',
  moreOf: (word: string) => `Guardar, pasar o borrar ${word}`,
  title: (word: string) => `Sala ${word}`,
  file: 'En un archivo',
  fileNote: 'Todos los dibujos y resultados. Cualquier ordenador con Harbour Lines lo vuelve a abrir.',
  fileSave: 'Guardar la sala (JSON)',
  erase: 'Borrar para siempre',
  eraseNote:
    'Los dibujos, resultados y sitios se borran de este servidor. Solo un archivo guardado los puede recuperar.',
  eraseGo: 'Borrar esta sala',
  eraseSure: (word: string) => `Sí, borrar ${word}`,
  eraseNot: 'Conservarla',
  erasing: (word: string) => `${word} se borra en diez segundos.`,
  until: (when: string) => `se guarda hasta el ${when}`,
  soon: (word: string, when: string) =>
    `${word} se borra el ${when}, porque hace mucho que nadie la usa. Se puede guardar en un archivo, o abrirla y seguir.`,
  erasedTitle: 'Borradas hace poco',
  erased: (word: string, when: string, why: 'desk' | 'age') =>
    why === 'age' ? `${word}, el ${when}, por su antigüedad` : `${word}, el ${when}, desde una mesa`,
};
