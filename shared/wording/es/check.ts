import type { Arrivals, CheckReport } from '../../wire/protocol.ts';
import { SLOW_PAGE, SLOW_TRIP, type Verdict } from '../en/check.ts';
import { numbers } from './numbers.ts';

/** The page that is opened on one tablet, and what the desk says of devices that get through or don't. */

const length = (ms: number) =>
  ms < 1000 ? `${Math.max(1, Math.round(ms))} ms` : `${numbers.fixed(ms / 1000, 1)} s`;
const ago = (ms: number) =>
  ms < 60_000 ? `hace ${Math.max(1, Math.round(ms / 1000))} s` : `hace ${Math.round(ms / 60_000)} min`;

function verdict({ roundTripMs, pageMs, live }: CheckReport): Verdict {
  if (!live)
    return {
      tone: 'stops',
      title: 'La página llega, la conexión viva no.',
      short: 'La página llegó, la conexión viva no: algo por el camino para los websockets.',
      text: 'Algo entre este aparato y el ordenador de la clase para los websockets, a menudo un filtro de la red del centro. Hay que pedir una excepción para esta dirección o usar otra red.',
    };
  if (roundTripMs > SLOW_TRIP || pageMs > SLOW_PAGE)
    return {
      tone: 'caution',
      title: 'Este aparato llega, pero despacio.',
      short: 'Llega, pero despacio.',
      text: 'Una clase funciona; las páginas tardan si todos las abren a la vez. Conviene acercarse al punto de acceso o hacer entrar las tabletas de pocas en pocas.',
    };
  return {
    tone: 'met',
    title: 'Este aparato llega.',
    short: 'Llega.',
    text: 'Es bastante rápido para una clase. Lo que puede un aparato lo pueden otros de la misma red.',
  };
}

const figures = ({ roundTripMs, pageMs, live }: CheckReport): readonly (readonly [string, string])[] => [
  ['Una respuesta tarda', length(roundTripMs)],
  ['La página tarda', length(pageMs)],
  ['Conexión viva', live ? 'se abre' : 'no se abre'],
];

/** What the desk says as long as no team is in the room. */
const arrived = ({ visits, lastAgo, check }: Arrivals): string | null => {
  if (check)
    return `Un aparato hizo la prueba ${ago(check.ago)}. ${verdict(check).short} Una respuesta tardó ${length(check.roundTripMs)}, la página ${length(check.pageMs)}.`;
  return lastAgo === null
    ? null
    : `Los aparatos llegan: ${numbers.counted(visits, 'visita', 'visitas')}, la última ${ago(lastAgo)}. Falta la palabra de la sala.`;
};

export const check = {
  title: '¿Llega este aparato?',
  measuring: 'Midiendo el camino hasta el ordenador de la clase',
  again: 'Medir otra vez',
  told: 'La mesa también lo muestra.',
  gone: {
    title: 'El ordenador de la clase ya no responde.',
    text: 'Hay que mirar si el servidor sigue en marcha y si los dos están aún en la misma red, y medir otra vez.',
  },
  verdict,
  figures,
  desk: {
    trouble: '¿No llega ninguna tableta?',
    none: 'Desde hace un minuto ningún otro aparato ha llegado a este ordenador. Hay tres causas probables:',
    causes: [
      {
        title: 'Otra red.',
        text: 'La tableta y este ordenador deben estar en la misma. Conviene mirar el nombre de la red en los dos.',
      },
      {
        title: 'Aparatos separados.',
        text: 'Muchas redes de centros y de invitados dejan llegar a internet, pero no de un aparato a otro. Hay que pedir una sin eso, o compartir la red desde un teléfono o desde este ordenador.',
      },
      {
        title: 'Un cortafuegos.',
        text: 'Este ordenador puede preguntar si otros pueden llegar a él: hay que permitirlo en redes privadas. Donde las reglas las lleva alguien, hay que abrir el puerto.',
      },
    ],
    try: (address: string) => `Para saber cuál: abrir ${address} en el navegador de una tableta.`,
    arrived,
    chooseAddress: 'Dirección en el código',
    chooseNote: 'Elegir la red en la que están las tabletas.',
    addressNow: (host: string) => `El código lleva ahora a ${host}.`,
    place: (host: string, network: string) => (network === '' ? host : `${host} (${network})`),
  },
};
