import type { KeptHere } from '../en/kept.ts';
import { numbers } from './numbers.ts';

const HERE: Readonly<Record<KeptHere, string>> = {
  device: 'cómo habla y muestra las cosas este aparato',
  rota: 'el plan de carga tal como se escribió',
  fit: 'recorridos con reloj y límites de los robots, tal como se escribieron',
  check: 'las marcas de los cinco minutos antes de una clase',
  builder: 'cambios de retos que el servidor todavía no tiene',
  kits: 'cambios de kits sin guardar',
  keys: 'si las teclas sueltas hacen algo',
  plays: 'qué formas de jugar ha mostrado este aparato',
  outbox: 'lo que espera al servidor',
  drawings: 'dibujos de equipos que jugaron en este navegador',
  files: 'archivos de la página de las tabletas, para cuando no está el servidor',
  other: 'algo de una versión anterior',
};

/** The one place that says what is kept and erases it. */
export const kept = {
  leaf: 'Lo guardado',
  title: 'Qué se guarda y hasta cuándo',
  first:
    'Esto es todo. Los equipos son emblemas: no se piden nombres de personas, así que mejor no escribir ninguno.',
  loading: 'Buscando',
  rooms: 'Salas de este servidor',
  roomsWhat: 'Dibujos, resultados, respuestas, lo que se probó, el registro de calibraciones, sitios.',
  roomsNone: 'No se guarda ninguna sala.',
  room: (word: string, opened: string): string => `${word}, abierta el ${opened}`,
  until: (when: string): string => `hasta el ${when}`,
  untilErased: 'hasta que se borre',
  erase: 'Borrar',
  eraseRoom: (word: string): string => `Borrar la sala ${word}`,
  links: 'Enlaces dados',
  linksWhat:
    'Una huella de cada uno, nunca el enlace mismo. Al anular una mesa se borran sus retos y kits; sus salas se quedan.',
  linksNone: 'No se guarda ningún enlace.',
  deskLink: (word: string, when: string): string => `${word}, una mesa, creado el ${when}`,
  roomLink: (word: string, when: string): string => `${word}, una sala, creado el ${when}`,
  revoke: 'Anular',
  revokeLink: (word: string): string => `Anular el enlace ${word}`,
  made: 'Hecho en esta mesa',
  madeNone: 'Ningún reto ni kit propio.',
  challenge: (name: string, when: string): string => `reto «${name}», guardado el ${when}`,
  kit: (name: string, when: string): string => `kit «${name}», guardado el ${when}`,
  eraseMade: (name: string): string => `Borrar ${name}`,
  here: 'En este navegador',
  hereThing: (thing: KeptHere): string => HERE[thing],
  hereNone: 'Nada más que la cookie.',
  cookie: 'Una cookie: el derecho a abrir esta mesa, durante 30 días desde que se abrió con su enlace.',
  eraseHere: 'Borrar lo que guarda este navegador',
  forget: 'Cerrar la mesa en este navegador',
  forgetNote: 'Quita la cookie. El enlace de esta mesa la devuelve: conviene tenerlo a mano.',
  forgetSure: 'Sí, cerrar la mesa aquí',
  forgetNot: 'Dejarla abierta',
  elsewhere: 'Adonde esta mesa no llega',
  elsewhereLines: [
    'En cada tableta: una cookie para su sitio, durante 30 días, y su propio dibujo. Se borran en los ajustes del navegador, como datos de este sitio.',
    'Salas guardadas como archivos, hojas impresas, copias de seguridad y un archivo de datos dañado que se apartó: se borran donde están.',
    'Durante un mes tras borrar una sala el servidor aún sabe su palabra y el día, nada más.',
  ],
  all: 'Borrar todo',
  allNote: (rooms: number, links: number, made: number): string =>
    `${numbers.counted(rooms, 'sala', 'salas')}, ${numbers.counted(links, 'enlace', 'enlaces')}, ${numbers.counted(made, 'reto o kit propio', 'retos y kits propios')} y lo que guarda este navegador. Antes, guardar como archivo las salas que hagan falta.`,
  allSure: 'Sí, borrar todo',
  allNot: 'Guardar todo',
  undo: {
    all: 'Todo se borra en diez segundos.',
    here: 'Lo que guarda este navegador se borra en diez segundos.',
    made: (name: string): string => `${name} está borrado.`,
    link: (word: string): string => `El enlace ${word} está anulado.`,
    desk: (word: string): string => `La mesa ${word} está anulada; lo que hizo se borra en diez segundos.`,
  },
};
