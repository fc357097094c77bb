import type { Supply } from '../../prep/supplies.ts';
import type { SuppliesOf } from '../en/supplies.ts';
import { numbers } from './numbers.ts';

const WHAT: Readonly<Record<Supply, (kit: SuppliesOf) => string>> = {
  robots: () => 'robots para la clase',
  tablets: () => 'tabletas u ordenadores pequeños',
  'line-markers': ({ line }) => `rotuladores negros con punta de ${line}`,
  'band-markers': ({ inks }) => `juegos de rotuladores para las bandas: ${numbers.list(inks)}`,
  sheets: () => 'hojas del reto',
  'paper-under': () => 'hojas de papel de sobra',
  tape: () => 'cinta que se despega, en rollos',
  'gauge-cards': () => 'tarjetas de medida',
  slips: () => 'papeletas',
  patches: () => 'parches de calibración',
  chart: () => 'tabla para la pared',
  cloths: () => 'paños húmedos',
  box: () => 'caja',
};

const NOTES: Readonly<Record<Supply, string>> = {
  robots: 'cargados, encendidos y con los números de los amarres',
  tablets: 'una para dos o tres niños',
  'line-markers':
    'tan anchos como la línea, para dibujarla de un trazo; al agua; con tapones ventilados según ISO 11540',
  'band-markers':
    'los que venían con los robots u otros que sepan leer; al agua; con tapones ventilados según ISO 11540',
  sheets: 'por equipo, una para probar, otra en limpio y otra más; impresas al 100 %',
  'paper-under': 'bajo la hoja, para la tinta que traspasa',
  tape: 'de 10 m cada uno, para las esquinas de las hojas',
  'gauge-cards': 'para poner sobre un dibujo antes de que pase un robot',
  slips: 'creemos · hizo · porque',
  patches: 'donde conducen los robots, con la luz de la clase',
  chart: 'donde se lea desde todas partes',
  cloths: 'para la tinta fresca en manos y mesas',
  box: 'para contar robots, tapones y repuestos al sacarlos y al guardarlos',
};

export const supplies = {
  leaf: 'Material',
  title: 'Lo que hace falta para la clase',
  teams: 'Cuántos equipos',
  forTeams: (n: number): string => `Para ${numbers.counted(n, 'equipo', 'equipos')}`,
  what: (supply: Supply, kit: SuppliesOf): string => WHAT[supply](kit),
  note: (supply: Supply): string => NOTES[supply],
  spare: (n: number): string => `${n} de repuesto`,
  how: 'Las cantidades son práctica común: lo que un equipo tiene en las manos y un repuesto por cada cinco.',
  countHead: 'Cuántos',
  whatHead: 'Qué',
  careful: 'Cuidados',
  save: 'Guardar la lista como PDF',
};
