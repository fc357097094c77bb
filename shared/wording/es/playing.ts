import type { Play } from '../../documents/challenge.ts';

/** How each way is played, in a few words beside each picture. */

const TRIED = 'Prueba y luego entrega.';

const HOW_TO_PLAY: Readonly<Record<Play, readonly [string, string, string]>> = {
  draw: ['Dibuja líneas para el robot.', 'Pon marcas encima.', TRIED],
  'fill-in': ['Las líneas ya están.', 'Pon marcas encima.', TRIED],
  mend: ['Aquí algo está mal.', 'Cambia muy poco.', TRIED],
  predict: ['Todo está dibujado ya.', '¿Qué hará el robot?', 'Responde y luego entrega.'],
};

export const playing = {
  help: 'Ayuda',
  title: 'Cómo se juega',
  how: HOW_TO_PLAY,
};
