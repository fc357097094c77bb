const UNDER = {
  end: 'un cabo',
  corner: 'una esquina',
  middle: 'la mitad de una curva',
  line: 'una línea',
  paper: 'papel',
} as const;

/** Dibujar con teclas. */
export const keys = {
  title: 'Teclas',
  close: 'Cerrar',
  how: 'Las flechas mueven un cursor por el papel. Intro agarra y suelta. El signo de interrogación muestra todas las teclas.',
  place: (across: string, down: string): string => `${across} a lo ancho, ${down} hacia abajo`,
  under: (kind: keyof typeof UNDER): string => UNDER[kind],
  mark: (name: string): string => `marca ${name}`,
  inBox: (name: string): string => `dentro de ${name}`,
  holds: 'agarrado',
  noFreehand: 'A mano alzada hace falta un dedo. Las teclas dibujan rectas; Curva las dobla.',
  rows: [
    ['← → ↑ ↓', 'mover el cursor 5 mm'],
    ['Mayús + ← → ↑ ↓', 'moverlo 1 mm'],
    ['N', 'al siguiente cabo, esquina, mitad o marca; con Mayús, al anterior'],
    ['Intro', 'empezar y terminar una recta; poner una marca; borrar; agarrar y soltar'],
    ['Mayús + Intro', 'elegir una cosa más, con Mover'],
    ['1 … 7', 'elegir una herramienta, en el orden de la página'],
    ['F', 'dar la vuelta a la marca elegida'],
    ['Supr', 'borrar lo elegido'],
    ['Esc', 'soltar; después, guardar el cursor'],
    ['G', 'a la siguiente cosa que mirar'],
    ['R', 'la hoja en palabras'],
    ['T', 'probar'],
    ['+ −', 'más cerca, más lejos'],
    ['0', 'la hoja entera'],
    ['Ctrl + Z, Ctrl + Y', 'deshacer, rehacer'],
    ['Ctrl + A, Ctrl + D', 'elegir todo, copiar lo elegido'],
    ['?', 'estas teclas'],
  ] as readonly (readonly [string, string])[],
};
