import type { Mm, PaperPoint } from '../../geometry/units.ts';
import { numbers } from './numbers.ts';

const place = ({ x, y }: PaperPoint): string =>
  `${numbers.centimetres(x)} a lo ancho, ${numbers.centimetres(y)} hacia abajo`;
const after = (way: Mm, what: string): string => `Después de ${numbers.length(way)}: ${what}`;
const side = (turn: number): string => (turn > 0 ? 'derecha' : 'izquierda');
const size = (degrees: number): string => numbers.angle(degrees < 0 ? -degrees : degrees);
const lines = (met: readonly number[]): string =>
  `${met.length === 1 ? 'la línea' : 'las líneas'} ${numbers.list(met.map(String))}`;

/** La hoja en palabras, para quien la escucha. */
export const reading = {
  title: 'La hoja en palabras',
  close: 'Cerrar',
  onSheet: 'En la hoja',
  drawn: 'Líneas y marcas',
  nothing: 'Todavía no hay nada dibujado.',
  start: (name: string, at: PaperPoint): string => `${name}: de aquí salen los robots, ${place(at)}.`,
  finish: (name: string, at: PaperPoint): string => `${name}: ${place(at)}.`,
  gate: (name: string, at: PaperPoint): string => `${name}, una puerta: ${place(at)}.`,
  area: (name: string, at: PaperPoint): string => `${name}, un lugar: alrededor de ${place(at)}.`,
  keepOut: (name: string, at: PaperPoint): string => `${name}, zona prohibida: alrededor de ${place(at)}.`,
  box: (name: string, from: PaperPoint, to: PaperPoint): string =>
    `${name}, un recuadro para poner marcas: desde ${place(from)} hasta ${place(to)}.`,
  place,
  lineNumber: (n: number): string => `la línea ${n}`,
  line: (n: number, given: boolean, from: string, to: string, length: Mm): string =>
    `Línea ${n}${given ? ', ya puesta' : ''}, desde ${from} hasta ${to}: ${numbers.length(length)}.`,
  mark: (way: Mm, name: string, back: string | null): string =>
    after(way, back === null ? `marca ${name}.` : `marca ${name}; desde el otro lado, ${back}.`),
  corner: (way: Mm, inside: number, turn: number): string =>
    after(way, `esquina de ${size(inside)}, a la ${side(turn)}.`),
  curve: (way: Mm, turn: number, radius: Mm): string =>
    after(way, `curva a la ${side(turn)} de ${size(turn)}, radio ${numbers.length(radius)}.`),
  junction: (way: Mm, met: readonly number[]): string => after(way, `cruce con ${lines(met)}.`),
  hear: 'Leer en voz alta',
  stop: 'Dejar de leer',
};
