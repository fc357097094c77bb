import type { Phase } from '../../room/state.ts';
import type { CannotPrint, WireRefusal } from '../../wire/protocol.ts';
import { judging } from './judging.ts';
import { numbers } from './numbers.ts';

/** What was wrong and what to do, one sentence or two a code. Read by teachers and children. */

type Sentences = {
  readonly [C in WireRefusal['code']]: (refusal: Extract<WireRefusal, { code: C }>) => string;
};

const PHASE: Readonly<Record<Phase, string>> = {
  gather: 'los equipos están entrando',
  brief: 'se está explicando el reto',
  build: 'los equipos están dibujando',
  show: 'se están mirando los dibujos',
  drive: 'los robots conducen sobre el papel',
  close: 'se está acabando la clase',
};

const CANNOT_PRINT: Readonly<Record<CannotPrint, string>> = {
  'no-challenge': 'Aún no hay reto elegido. Elige uno para esta hoja.',
  'no-drawing': 'Este equipo aún no ha dibujado nada. Imprime la hoja del reto o espera a su dibujo.',
  'nothing-drawn':
    'Este reto no tiene un dibujo hecho sobre el que preguntar. Elige uno que traiga líneas o dibujo.',
  'one-end':
    'Aquí no hay dos robots que lean la misma marca por los dos lados. Elige un reto con marcas y un segundo amarre.',
  'no-fault': 'Ningún fallo pequeño estropea este dibujo. Elige un reto con marcas.',
  'not-asked':
    'Aún no se han hecho las preguntas finales. Antes hay que hacerlas en «Cerrar»: entonces salen de lo entregado.',
  'no-page': 'No hay tantas páginas. Vuelve a la primera.',
};

const kilobytes = (bytes: number) => Math.ceil(bytes / 1000);

export const refusals: Sentences = {
  'not-for-this-seat': () => 'Esta página no puede hacer eso. Pregunta en la mesa de tu profe.',
  'not-now': ({ phase }) => `Ahora no: ${PHASE[phase]}. Cambia antes el paso de la clase.`,
  'room-full': ({ most }) =>
    `Esta sala está llena: ya hay ${most} equipos. Comparte tableta con otro equipo.`,
  'unknown-team': () => 'Este equipo no está en esta sala. Carga la página otra vez.',
  'team-removed': () => 'Este equipo está fuera de la sala. En la mesa se puede volver a meter.',
  'emblem-taken': () => 'Otro equipo ya tiene este emblema. Elige otro.',
  'no-challenge': () => 'Aún no hay reto elegido. Primero hay que elegir uno en la mesa.',
  'unknown-challenge': ({ key }) => `No hay ningún reto llamado «${key}». Elige uno de la lista.`,
  'other-round': () =>
    'Este dibujo es de un reto anterior. Se queda en esta tableta; sigue con el reto nuevo.',
  'other-sheet': () =>
    'Este dibujo no está en una hoja de tu equipo. Carga la página, míralo y entrégalo otra vez.',
  'unknown-entry': () => 'Ese dibujo no está en esta sala. Elige uno de la lista.',
  'already-judged': () => 'Este dibujo ya tiene su resultado. No ha cambiado nada.',
  'not-building': () => 'Ahora nadie dibuja. Espera a que empiece el tiempo.',
  'already-so': () => 'Ya está así. No ha cambiado nada.',
  'not-judged': () => 'Este dibujo aún se está mirando. Prueba otra vez dentro de un momento.',
  'not-on-the-wall': () =>
    'Este equipo prefiere no salir en la pared. Hay que hablarlo con el equipo o elegir otro dibujo.',
  'nothing-to-ask': () =>
    'No se ha entregado nada nuevo sobre lo que preguntar. Antes hay que jugar un reto con líneas y marcas.',
  'no-check': () => 'Estas preguntas ya han terminado. Espera a las próximas.',
  'unknown-answer': () => 'Esa no es una de las respuestas. Vuelve a cargar la página.',
  'too-many-on-stage': ({ most }) => `Caben ${most} dibujos lado a lado como mucho. Quita uno antes.`,
  'nothing-to-show': () => 'Aún no se ha elegido nada para esta escena. Elige antes un dibujo para ella.',
  'queue-full': ({ most }) => `Como mucho esperan ${most} retos. Quita antes uno de la cola.`,
  'unknown-trial': () => 'Esa nota no está en esta sala. Carga la página otra vez.',
  'too-many-trials': ({ most }) => `En una sala caben ${most} pruebas. Para más, abre otra sala.`,
  'bad-form': ({ path, problem }) =>
    `Algo de lo enviado no está bien${path ? ` (en ${path}: ${problem})` : ` (${problem})`}. No ha cambiado nada; carga la página otra vez y prueba de nuevo.`,
  'too-large': ({ bytes, most }) =>
    `Es demasiado grande: ${kilobytes(bytes)} kB, y caben ${kilobytes(most)} kB como mucho. Quita algo y prueba otra vez.`,
  'too-fast': () => 'Demasiadas veces en poco tiempo. Espera un momento y prueba otra vez.',
  'other-version': () => 'Esta página es más vieja o más nueva que el servidor. Carga la página otra vez.',
  'no-seat': () =>
    'Esta página no tiene sitio aquí. Escribe la palabra de la sala o abre otra vez el enlace de la mesa.',
  'other-site': () =>
    'Esto llegó desde una página de otro sitio, así que no se ha hecho nada. Usa las páginas de este servidor.',
  'seat-freed': () =>
    'Esta tableta descansa. Pregunta en la mesa de tu profe con qué tableta sigue tu equipo.',
  'unknown-room': () => 'Ninguna sala tiene esta palabra. Mira la pizarra y escríbela otra vez.',
  'no-room-named': () =>
    'Aquí tienen sala varias clases. Abre la pizarra desde tu mesa o di qué sala muestra.',
  'unknown-document': () => 'Eso no está aquí, o no es para esta página. Carga la página otra vez.',
  'unknown-page': () => 'Esa página no existe. Mira bien la dirección.',
  'cannot-print': ({ why }) => CANNOT_PRINT[why],
  'wrong-key': () =>
    'Este enlace no abre ninguna mesa, o ya no la abre. Hay que pedir uno nuevo o usar el que el servidor mostró al arrancar.',
  'kit-not-sound': ({ problem, path, more }) =>
    `Una sala aún no puede jugar con este kit. ${judging.challengeProblem(problem)} (En ${path}${more > 0 ? `; hay ${numbers.counted(more, 'cosa más', 'cosas más')} por arreglar` : ''}.) Hay que arreglarlo en el editor de kits; hasta entonces se puede guardar como borrador.`,
  'wrong-code': () =>
    'Este código ya se ha usado, es viejo o está mal escrito. Pide uno nuevo en la mesa de tu profe.',
  'unknown-link': () => 'Ese enlace ya no existe. Carga la página otra vez.',
  'shelf-full': ({ most }) =>
    `Esta mesa ya ha guardado ${most}, que es todo lo que puede guardar. Hay que borrar antes alguno.`,
  'not-on-shelf': () => 'Eso ya no está ahí. Carga la página otra vez.',
  'store-full': () =>
    'El disco del ordenador de la clase está lleno y no se puede guardar más. Hay que hacer sitio y probar otra vez.',
  'store-away': () =>
    'El servidor no llega ahora a su base de datos. Deja esta página abierta: lo enviado espera aquí y sale solo.',
  'restart-needed': () =>
    'El servidor tiene un problema con su disco. Hay que cerrarlo en el ordenador de la clase y abrirlo otra vez: lo guardado sigue ahí. Después, prueba de nuevo.',
  'server-trouble': () =>
    'El servidor ha tenido un problema con eso. No ha cambiado nada; prueba otra vez dentro de un momento.',
};

/** The sentence for any refusal. */
export const refusalSentence = (refusal: WireRefusal): string =>
  (refusals[refusal.code] as (r: WireRefusal) => string)(refusal);
