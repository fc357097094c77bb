import { chargingRota, type Rota, type Watched } from '../../shared/prep/rota.ts';
import { type Figure, median } from './figure.ts';

const ROBOTS = 40;
const CLASSES = 30;
const WARM_UP = 3;
const PORTS = [4, 6, 7, 10, 12] as const;

const day = (date: string): Watched => ({ date, from: 8 * 60, to: 18 * 60 });
const WATCHED = ['2027-03-01', '2027-03-02', '2027-03-03'].map(day);

/** Forty robots that come back from a lesson as full as it happens: every class another one. */
function classRota(number: number): Rota {
  const answer = chargingRota({
    robots: Array.from({ length: ROBOTS }, (_, i) => ({
      robot: i + 1,
      capacity: 300,
      charge: ((i * 37 + number * 53) % 90) / 100,
    })),
    ports: PORTS[number % PORTS.length]!,
    current: 200,
    watched: WATCHED,
    needed: { date: '2027-03-04', minute: 8 * 60 },
  });
  if (!answer.ok) throw new Error(answer.refusal.code);
  return answer.rota;
}

/** How long the rota of a large class takes, and how far it may be from the shortest. */
export function rotaFigures(): Figure[] {
  const times: number[] = [];
  const rotas: Rota[] = [];
  for (let number = -WARM_UP; number < CLASSES; number++) {
    const began = performance.now();
    const rota = classRota(number + WARM_UP);
    if (number < 0) continue;
    times.push(performance.now() - began);
    rotas.push(rota);
  }
  const gaps = rotas.map(({ length, bound }) => length - bound);
  return [
    { name: 'rota-40', value: median(times), unit: 'ms', target: { at: 'most', value: 100 } },
    { name: 'rota-40-slowest', value: Math.max(...times), unit: 'ms', target: { at: 'most', value: 100 } },
    { name: 'rota-40-optimal', value: rotas.filter(({ optimal }) => optimal).length, unit: `of ${CLASSES}` },
    { name: 'rota-40-largest-gap', value: Math.max(...gaps), unit: 'min' },
  ];
}
