import type { PlanPhase } from '../../prep/lesson-plan.ts';
import type { PhaseWords } from '../en/lesson-plan.ts';
import { numbers } from './numbers.ts';

const PHASES: Readonly<Record<PlanPhase, PhaseWords>> = {
  prepare: {
    name: 'Preparar',
    does: 'Seguir en la mesa la lista de cinco minutos. Poner a mano lo que dice la lista de material. Llevar la pizarra al proyector: «Abrir la pizarra» en Reunir, o la tecla B si el ordenador tiene una sola pantalla.',
    say: '',
    materials: 'ordenador, proyector, robots, hojas, rotuladores, cinta',
    careful:
      'Desconectar los cargadores o quedarse con ellos. Pegar las hojas a 10 cm del borde de la mesa; dejar libres los pasos.',
  },
  gather: {
    name: 'Reunir',
    does: 'Cada dos o tres niños cogen una tableta y escanean el código de la pizarra, o abren la dirección y escriben la palabra de la sala. Calibrar los robots en el parche y tocar el amarre de cada uno en Reunir, Los robots.',
    say: '«Escanea el código de la pared. La imagen que sale es tu equipo.»',
    materials: 'tabletas, robots, parches de calibración',
    careful: 'Nadie escribe nombres. Los robots se posan, no se tiran.',
  },
  brief: {
    name: 'Explicar',
    does: 'Elegir el reto en Explicar y tomarlo (N). Leer el objetivo en la pizarra en voz alta; enseñar la tabla.',
    say: '«El robot sigue la línea. Lee las bandas desde el lado por el que viene. ¿Qué tiene que hacer aquí?»',
    materials: 'tabla para la pared, una hoja para enseñar',
    careful: 'Con la tecla H descansan todas las tabletas mientras se habla.',
  },
  build: {
    name: 'Dibujar',
    does: 'Empezar a dibujar (N). Los equipos dibujan en la tableta, prueban y entregan. Dar una vuelta: la mesa dice quién puede necesitar ayuda y por qué falla un dibujo.',
    say: '«Antes de probar: ¿lo conseguirá el robot? ¿Dónde puede fallar?»',
    materials: 'tabletas',
    careful: 'La tecla T lo pone todo en pausa. Ningún dibujo sale en la pizarra si no se pone allí.',
  },
  show: {
    name: 'Mostrar',
    does: 'Terminar (N) y pasar a Mostrar (N). N muestra el dibujo siguiente; un número, el mejor de ese equipo. Parar antes de una marca y preguntar.',
    say: '«¿Qué hará en esta marca? Manos arriba. Ahora miramos.»',
    materials: 'la pizarra',
    careful: 'No hay clasificación si no se enciende. Quien prefiere no salir no sale.',
  },
  drive: {
    name: 'Conducir',
    does: 'Pasar a Conducir. Los equipos dibujan su pista en una hoja de papel, o se imprime la suya (tecla O). La lista dice qué equipo conduce qué robot; anotar allí lo que hace. El equipo rellena una papeleta.',
    say: '«¿Ha hecho lo que decía la tableta? Si no: ¿qué es distinto en el papel?»',
    materials: 'hojas, rotuladores, papel de sobra, tarjetas de medida, papeletas, robots',
    careful:
      'Tapón puesto en cuanto se acaba una línea; la tinta se seca antes de que pase un robot. Apartar un robot que se calienta, se hincha, huele o hace ruido.',
  },
  close: {
    name: 'Cerrar',
    does: 'Pasar a Cerrar. Empezar por las preguntas finales, en las tabletas o en papel. Luego mirar juntos lo que ha hecho la clase y guardar los resultados.',
    say: '«¿Qué le dirías a alguien que dibuja una marca por primera vez?»',
    materials: 'tabletas, la caja',
    careful: 'Contar robots, tapones y repuestos al guardarlos. Desconectar los cargadores.',
  },
};

/** What is printed for whoever gives the lesson, also for somebody who has never seen the desk. */
export const lessonPlan = {
  leaf: 'Plan de la clase',
  title: (minutes: number): string => `Plan para una clase de ${minutes} minutos`,
  minutes: 'Minutos de clase',
  how: 'Las fases suman justo los minutos. El plan dice qué hacer, qué decir y qué cuidar, también a quien nunca ha visto esta mesa.',
  save: 'Guardar el plan como PDF',
  phase: (phase: PlanPhase): string => PHASES[phase].name,
  does: (phase: PlanPhase): string => PHASES[phase].does,
  say: (phase: PlanPhase): string => PHASES[phase].say,
  materials: (phase: PlanPhase): string => `Material: ${PHASES[phase].materials}.`,
  careful: (phase: PlanPhase): string => `Cuidado: ${PHASES[phase].careful}`,
  span: (from: number, to: number): string => `de ${from} a ${to}`,
  lasts: (minutes: number): string => `${minutes} min`,
  questions: (n: number): string => `Preguntas finales: ${numbers.short(n, 0)}.`,
  phaseHead: 'Fase',
  minuteHead: 'Minuto',
  doHead: 'Qué hacer',
  room: (word: string, teams: number): string =>
    `Sala ${word}, ${teams === 0 ? 'aún sin equipos' : numbers.counted(teams, 'equipo', 'equipos')}`,
  open: {
    title: 'Cómo abrir la mesa',
    start:
      'Encender el ordenador y el proyector. Si Harbour Lines no está en marcha, arrancarlo: el archivo start de su carpeta, o npm start.',
    link: (word: string): string =>
      `Abrir el enlace recibido en un navegador de la misma red. Abre la mesa de la sala ${word} y nada más. No hay cuentas ni contraseñas.`,
    anyLink: 'Abrir el enlace recibido en un navegador de la misma red. No hay cuentas ni contraseñas.',
    without: (address: string): string =>
      `Sin enlace: abrir ${address}/desk en el navegador de ese ordenador y elegir Seguir junto a la sala.`,
    tablets: (address: string): string =>
      `En las tabletas: abrir ${address} y escribir la palabra de la sala.`,
    keys: 'N es siempre el siguiente paso sensato; el signo de interrogación muestra todas las teclas; U deshace lo que se acaba de quitar.',
    write: 'Enlace para quien sustituye (mesa, Preparar, «Guardar, pasar, borrar»):',
  },
  challenge: {
    title: 'El reto',
    open: 'aún ninguno',
    none: 'Aún no hay ninguno elegido. Elegir uno en Explicar: el primero de la lista va bien para una primera clase.',
    teaches: (text: string): string => `Enseña: ${text}`,
    mistakes: (text: string): string => `Errores habituales: ${text}`,
    ask: (text: string): string => `Una pregunta para la clase: ${text}`,
  },
  trouble: {
    title: 'Si algo va mal',
    lines: [
      'Una tableta no entra: abrir en ella la dirección con /check detrás. Dice por qué.',
      'Una página se ve mal: recargarla. Los dibujos y los puntos se guardan.',
      'No hay conexión: los equipos siguen dibujando y vuelve sola.',
      'Hace falta calma: con H descansan las tabletas, con T se para también el tiempo.',
    ],
  },
};
