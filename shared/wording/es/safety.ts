import type { Caution, CautionGroup } from '../en/safety.ts';

const PRACTICE = 'práctica común';

const CHARGING: readonly Caution[] = [
  {
    text: 'Alguien se queda con el cargador todo el tiempo. Nada se carga sin vigilancia ni de noche.',
    by: 'West Yorkshire and Avon Fire & Rescue; United Educators',
  },
  {
    text: 'Solo entre 0 y 40 °C, lejos del sol y de los radiadores. Si el fabricante permite menos, vale lo suyo.',
    by: 'US Fire Administration; NFPA',
  },
  {
    text: 'Solo el cargador y el cable hechos para el robot, en un enchufe de pared, sin encadenar alargadores.',
    by: 'NFPA; West Yorkshire and Avon Fire & Rescue',
  },
  {
    text: 'En un sitio duro y despejado: nada que arda cerca, nada encima y nunca en el camino de salida.',
    by: 'NFPA; West Yorkshire and Avon Fire & Rescue',
  },
  {
    text: 'Desconectar al llenarse. Los robots están separados unos de otros, no en un montón.',
    by: 'NFPA; United Educators',
  },
  { text: 'Los robots están apagados mientras se cargan.', by: 'Battery University, BU-409' },
];

const HANDLING: readonly Caution[] = [
  {
    text: 'Mantener los robots secos. No dejarlos caer, ni aplastarlos, ni pincharlos, ni abrirlos.',
    by: 'London Fire Brigade',
  },
  {
    text: 'Nada de pilas sueltas, ni monedas o llaves donde haya un contacto al aire.',
    by: 'US Consumer Product Safety Commission',
  },
  {
    text: 'Un robot que se cayó o se mojó se aparta y no se carga hasta que alguien lo haya mirado.',
    by: PRACTICE,
  },
];

const SMALL_PARTS: readonly Caution[] = [
  {
    text: 'Tapones, ruedas y tornillos son piezas pequeñas: lejos de niños menores de 3 años.',
    by: '16 CFR 1501; EN 71, ASTM F963 e ISO 8124 para juguetes',
  },
  {
    text: 'Contar robots, tapones y repuestos al sacarlos y contarlos otra vez al guardarlos.',
    by: PRACTICE,
  },
];

const TABLES: readonly Caution[] = [
  {
    text: 'Las hojas están planas y pegadas a 10 cm del borde de la mesa, con una barrera de libros; mejor aún, en el suelo.',
    by: PRACTICE,
  },
  {
    text: 'Los pasos quedan libres: cables, mochilas y hojas están donde nadie pasa, y nadie salta por encima de un robot en marcha.',
    by: PRACTICE,
  },
];

const MARKERS: readonly Caution[] = [
  {
    text: 'Rotuladores al agua con tapones ventilados (ISO 11540), y papel de sobra bajo la hoja. El tapón se pone en cuanto se acaba una línea.',
    by: `ISO 11540 para los tapones; ${PRACTICE}`,
  },
  {
    text: 'Dejar secar la tinta antes de que un robot pase por encima, y limpiar la tinta fresca de manos, ruedas y suelo.',
    by: PRACTICE,
  },
];

const GROUPS: readonly CautionGroup[] = [
  { key: 'charging', title: 'Carga', cautions: CHARGING },
  { key: 'handling', title: 'Manejo', cautions: HANDLING },
  { key: 'small-parts', title: 'Piezas pequeñas', cautions: SMALL_PARTS },
  { key: 'tables', title: 'Mesas y suelo', cautions: TABLES },
  { key: 'markers', title: 'Rotuladores', cautions: MARKERS },
];

export const safety = {
  leaf: 'Cuidados',
  title: 'Antes de sacar los robots',
  first:
    'Primero van las instrucciones del fabricante y las normas del centro. Donde esta página diga otra cosa, vale lo más estricto.',
  groups: GROUPS,
  stop: {
    title: 'Parar enseguida si un robot o un cargador',
    signs: ['se calienta', 'se hincha', 'huele', 'silba o crepita', 'pierde líquido', 'cambia de color'],
    whatThen:
      'Cortar la corriente si se puede sin peligro, apartar a todo el mundo y llamar a los bomberos. Un robot dañado nunca va a la basura de casa.',
    by: 'US Fire Administration; NFPA',
  },
  sources:
    'Con nuestras palabras, según consejos públicos de los organismos nombrados. No sustituye las normas que valen donde se enseña.',
  print: 'Imprimir esta página',
  stays: 'Alguien se queda con el cargador',
  staysNote: 'mientras se esté cargando algo',
  nobodyStays: 'Nadie ha dicho que se queda con el cargador. Así no se puede cargar nada durante esta clase.',
  tickUnderPrepare: '¿Alguien se queda? Márcalo en «Preparar».',
};
