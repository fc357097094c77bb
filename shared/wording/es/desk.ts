import type { Play } from '../../documents/challenge.ts';
import type { Doing } from '../../wire/protocol.ts';
import { onClock } from '../clock.ts';
import type { Step } from '../en/desk.ts';
import { keeping, late, links, pausing, seats, undo } from './desk-room.ts';
import { coaching, conditions, picture, queue } from './desk-teams.ts';
import { numbers } from './numbers.ts';

const { counted } = numbers;

const STEPS: Readonly<Record<Step, string>> = {
  prepare: 'Preparar',
  gather: 'Reunir',
  brief: 'Explicar',
  build: 'Dibujar',
  show: 'Mostrar',
  drive: 'Conducir',
  close: 'Cerrar',
};

const PLAYS: Readonly<Record<Play, string>> = {
  draw: 'Dibujar',
  'fill-in': 'Completar',
  mend: 'Arreglar',
  predict: 'Predecir',
};

const PLAY_SENTENCES: Readonly<Record<Play, string>> = {
  draw: 'Los equipos dibujan todo el circuito.',
  'fill-in': 'Las líneas están puestas; los equipos ponen las marcas.',
  mend: 'Los equipos reciben un dibujo con un fallo y cambian lo menos posible.',
  predict: 'Todo está puesto. Los equipos dicen qué hará el robot.',
};

const DOINGS: Readonly<Record<Doing, string>> = {
  drawing: 'dibuja',
  answering: 'responde',
  trying: 'prueba',
  'handed-in': 'entregado',
  away: 'sin conexión',
};

const preparing = {
  leaves: 'Antes de la clase',
  openTitle: 'Abrir una sala',
  openNote: 'Una sala es una clase que juega junta. Se guarda en este ordenador hasta que se borra.',
  open: 'Abrir una sala',
  opening: 'Abriendo la sala',
  unwatched:
    'La sala se abre igual. La mesa sigue diciendo que nadie vigila el cargador hasta que se marque aquí.',
  thanks: 'Apuntado: alguien se queda con el cargador.',
  roomsTitle: 'Salas de este ordenador',
  roomsNone: 'Aquí aún no se ha abierto ninguna sala.',
  roomsLoading: 'Buscando salas',
  goOn: 'Seguir',
  goOnWith: (word: string) => `Seguir con ${word}`,
  nextLesson: 'Otra clase',
  nextLessonOf: (word: string) => `Otra clase con los equipos de ${word}`,
  openedAt: (when: string) => `abierta el ${when}`,
  restoreTitle: 'Abrir un archivo de sala',
  restoreNote: 'Un archivo que guardó una mesa al acabar la clase, en este ordenador o en otro.',
  restore: 'Elegir un archivo',
  notARoomFile:
    'Este archivo no se pudo leer como archivo de sala. Hay que elegir el que se guardó con «Guardar la sala».',
  toWall: 'Al malecón',
};

const gathering = {
  title: 'Entran los equipos',
  how: 'En cada tableta: escanear el código, o abrir la dirección y escribir la palabra de la sala.',
  word: 'Palabra de la sala',
  address: 'Dirección',
  copy: 'Copiar el enlace',
  copied: 'Copiado',
  boardOpen: 'Abrir la pizarra',
  boardHere: 'Pizarra aquí',
  boardHereTitle: 'Mostrar la pizarra en esta pantalla',
  noTeams: 'Aún no hay nadie. Los emblemas aparecen cuando entran las tabletas.',
  teams: (n: number) => counted(n, 'equipo', 'equipos'),
  berth: (n: number) => `amarre ${n}`,
  choose: 'Elegir un reto',
};

const briefing = {
  title: 'Elegir un reto',
  chosen: 'elegido',
  played: 'jugado',
  take: 'Tomar este reto',
  takeNext: 'Tomarlo como próximo reto',
  buildingStill: 'Los equipos aún dibujan. Primero hay que acabar eso.',
  topic: (n: number) => `Tema ${n}`,
  play: (play: Play) => PLAYS[play],
  playSentence: (play: Play) => PLAY_SENTENCES[play],
  goals: 'Lo que hay que cumplir',
  asked: 'Lo que se pregunta',
  also: 'da puntos, no es obligatorio',
  teaches: 'Lo que enseña',
  mistakes: 'Errores habituales',
  ask: 'Una pregunta para la clase',
  time: 'Tiempo para dibujar, en minutos',
  noLimit: 'sin límite',
  minutes: (n: number) => String(n),
  varied: 'Mesas vecinas con hojas en espejo o giradas',
  variedNote:
    'Todas las hojas son igual de difíciles; un dibujo copiado no sirve. Con viento, puede que lo consigan unos robots más o menos.',
  start: 'Empezar a dibujar',
};

const building = {
  title: (n: number) => counted(n, 'equipo', 'equipos'),
  noTeams: 'No hay ningún equipo en la sala. Las tabletas aún pueden entrar con la palabra de la sala.',
  left: 'queda',
  over: 'el dibujo ha acabado',
  spent: (ms: number) => `van ${onClock(ms)}`,
  extend: (minutes: number) => `+${minutes} min`,
  end: 'Acabar el dibujo',
  show: 'Ir a mostrar',
  doing: (doing: Doing) => DOINGS[doing],
  nothingYet: 'nada dibujado aún',
  nothingAnswered: 'Aún no hay respuestas.',
  entry: (number: number) => `entrega ${number}`,
  points: (n: number) => `${n} p`,
  mayNeed: 'Quizá necesitan ayuda',
  nobody: 'Nadie parece atascado.',
  need: {
    empty: 'nada dibujado aún',
    away: 'tableta sin conexión',
    stuck: (entries: number) => `${counted(entries, 'entrega', 'entregas')}, aún sin lograrlo`,
    same: (tries: number, title: string) => `${counted(tries, 'prueba', 'pruebas')}, lo mismo: ${title}`,
    tries: (n: number) => `${counted(n, 'prueba', 'pruebas')}, aún sin lograrlo`,
  },
  order: 'Orden',
  byNeed: 'primero quien se atasca',
  byBerth: 'amarres',
  trips: 'Dónde tropieza la clase',
  tripped: (title: string, teams: number) => `${title}: ${counted(teams, 'equipo', 'equipos')}`,
  select: 'Al elegir un equipo se ve su dibujo y por qué tiene los puntos que tiene.',
  thisChallenge: 'El reto en curso',
};

const team = {
  now: 'Ahora en la tableta',
  noEntries: 'Aún no ha entregado nada.',
  entry: (number: number) => `Entrega ${number}`,
  judging: 'se está mirando',
  unjudged: 'no se pudo mirar',
  judgeAgain: 'Mirarla otra vez',
  points: (n: number) => counted(n, 'punto', 'puntos'),
  goals: 'Objetivos',
  findings: 'Lo que dicen las reglas',
  noFindings: 'Las líneas y las marcas están bien.',
  happens: 'Lo que hace el robot',
  why: 'Por qué estos puntos',
  checking: 'Mirando el dibujo',
  show: 'Mostrar en la pizarra',
  showing: 'En la pizarra',
  back: 'Todos los equipos',
};

const showing = {
  title: 'El escenario',
  empty: 'No hay nada en el escenario. Con un número se muestra el mejor dibujo de ese equipo.',
  emptyNoEntries: 'Nadie ha entregado nada en este reto.',
  best: 'Lo mejor de cada equipo',
  play: 'Reproducir',
  pause: 'Pausa',
  again: 'Desde el principio',
  speedWord: 'Velocidad',
  scrub: 'Dónde va la repetición',
  at: (t: number, of: number) => `${numbers.short(t, 1)} de ${numbers.short(of, 1)} s`,
  heatWith: (name: string) => `Lado a lado con ${name}`,
  clear: 'Vaciar el escenario',
  standings: 'Clasificación en la pizarra',
  standingsWait:
    'Junto a varios dibujos no cabe la clasificación. Aparece con un solo dibujo, o con ninguno.',
  next: 'Siguiente dibujo',
  close: 'Cerrar la clase',
  noEntry: 'sin entrega',
  entry: (name: string, number: number) => `${name}, entrega ${number}`,
};

const closing = {
  together: 'Todos juntos',
  results: 'Resultados',
  csv: 'Guardar los resultados (CSV)',
  file: 'Guardar la sala (JSON)',
  fileNote: 'El archivo de la sala tiene todos los dibujos y resultados y se abre también en otro ordenador.',
  count: 'Contar al guardar',
  counts: ['robots en sus amarres', 'tapones en los rotuladores', 'cargadores desconectados'],
  teamHead: 'Equipo',
  total: 'Total',
  round: (n: number) => `Reto ${n}`,
  none: 'No se ha entregado nada.',
  again: 'Otro reto',
  leave: 'Salir de esta sala',
};

const board = {
  title: 'Ahora en la pizarra',
  gather: 'el malecón',
  brief: 'el objetivo y la hoja',
  build: 'quién hace qué, sin dibujos',
  show: 'un dibujo en el escenario',
  empty: 'el escenario, aún vacío',
  drive: 'qué equipo conduce qué robot',
  close: 'lo que ha hecho la clase',
  check: 'las últimas preguntas',
  look: '«Mira aquí»',
  paused: 'una pausa',
  standings: 'con clasificación',
  noStandings: 'sin puestos',
};

const status = {
  connecting: 'Buscando el servidor',
  away: 'El servidor no responde. Se ve lo último que llegó; la conexión vuelve sola.',
  quiet: 'Esta mesa está abierta en una pestaña más nueva. Ahora la sala la tiene esa.',
  takeOver: 'Usar esta pestaña',
  lost: (n: number) =>
    `El servidor ha perdido el final de esta clase: ${counted(n, 'paso', 'pasos')}. Hay que repasarla; lo que falta se puede hacer y entregar otra vez.`,
  seenLoss: 'Visto',
  waiting: (n: number) => counted(n, 'orden espera', 'órdenes esperan'),
};

const keys = {
  title: 'Teclas',
  open: 'Teclas',
  on: 'Las teclas sueltas hacen algo en esta página',
  groups: { lesson: 'Clase', teams: 'Equipos', stage: 'Escenario' },
  next: 'el próximo paso lógico, el botón azul',
  step: 'mirar un paso de la clase',
  look: '«Mira aquí», poner y quitar',
  pause: 'ponerlo todo en pausa, y seguir',
  undo: 'deshacer lo que se acaba de quitar o acabar',
  standings: 'clasificación en la pizarra, poner y quitar',
  flip: 'esta pantalla muestra la pizarra; con B se vuelve',
  help: 'esta lista',
  pick: 'elegir un equipo por su número, dos cifras seguidas; en el escenario: mostrar su mejor dibujo',
  say: 'decir algo al equipo elegido',
  order: 'las fichas por amarres, o primero quien quizá necesita ayuda',
  second: 'poner otro al lado, o quitarlo',
  move: 'de equipo en equipo',
  unpick: 'ningún equipo, volver al reto',
  extend: 'dos minutos más',
  paper: 'lo que va al papel',
  picture: 'la clase entera',
  queue: 'poner en la cola el reto marcado, o quitarlo',
  play: 'reproducir y pausar',
  scrub: 'un segundo atrás y adelante',
  readings: 'a la lectura anterior y a la siguiente',
  speed: 'velocidad ¼, ½, 1, 2, 4',
  loop: 'mostrar un tramo una y otra vez',
  sensors: 'lo que leen los sensores',
  whole: 'todo el recorrido como imagen fija',
  onTop: 'dibujos uno sobre otro',
  whatIf: 'y si algo fuera distinto',
  clear: 'vaciar el escenario',
};

export const desk = {
  title: 'Harbour Lines',
  room: 'sala',
  path: 'Pasos de la clase',
  step: (step: Step) => STEPS[step],
  here: 'la clase está aquí',
  doneStep: 'hecho',
  lookHere: 'Mira aquí',
  close: 'Cerrar',
  time: onClock,
  noSeat:
    'Este navegador no tiene mesa. Hay que abrir el enlace que el servidor mostró al arrancar, o pedir uno nuevo: un enlace anulado no abre nada.',
  unknownRoom: 'Esta sala ya no está en este servidor.',
  toRooms: 'Todas las salas',
  preparing,
  gathering,
  briefing,
  building,
  team,
  showing,
  closing,
  board,
  status,
  keys,
  coaching,
  conditions,
  queue,
  picture,
  late,
  pausing,
  seats,
  undo,
  links,
  keeping,
};
