import { pdfOf } from '../../server/print/pdf.ts';
import {
  type PrintedChallenge,
  type PrintedTeam,
  type PrintSource,
  printed,
} from '../../server/print/print.ts';
import { printTools } from '../../server/print/tools.ts';
import { storedChallenge, storedDesign } from '../../server/rooms/documents.ts';
import { readyNamed } from '../../server/rooms/ready.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { EMBLEMS } from '../../shared/room/state.ts';
import { coreSeconds, type Figure, median } from './figure.ts';
import { rotaFigures } from './rota.ts';

const TEAMS = 40;
const ROUNDS = 9;
const WARM_UP = 3;
const ASK = { paper: 'A4', lines: 'ink', marks: 'colour', key: 'no' } as const;
const BYTES_A_MB = 1e6;

/** Forty teams that have each drawn the largest sheet of the course: four pages of A4 a team. */
function room(): PrintSource {
  const named = readyNamed('round-the-harbour')!;
  const on: PrintedChallenge = { ...named, id: storedChallenge(named.challenge).id };
  const model = named.challenge.model!;
  const drawing = { drawing: model.drawing, id: storedDesign(model).id, on };
  const teams = EMBLEMS.slice(0, TEAMS).map((emblem): PrintedTeam => ({ emblem, drawing }));
  return {
    word: 'plum-42',
    teamCount: TEAMS,
    address: '192.0.2.1:4310',
    kit: DEMO_KIT,
    challenge: on,
    team: teams[0],
    teams,
  };
}

interface Cost {
  readonly clock: number;
  readonly cores: number;
  readonly bytes: number;
  readonly told: number;
}

async function costOf(kind: 'drawing' | 'sheet' | 'class', source: PrintSource): Promise<Cost> {
  const [began, used] = [performance.now(), coreSeconds()];
  const print = printed({ ...ASK, kind }, source, await printTools());
  if (!print.ok) throw new Error(`not printed: ${print.why}`);
  let told = 0;
  const bytes = await pdfOf(print.title, print.parts, { told: () => told++ });
  return {
    clock: performance.now() - began,
    cores: (coreSeconds() - used) * 1000,
    bytes: bytes.length,
    told,
  };
}

/** The rota, one sheet, and the packs of a whole class; by the clock, and in time of cores where others use them too. */
export async function bench(): Promise<Figure[]> {
  const source = room();
  const one: PrintSource = { ...source, challenge: { ...readyNamed('ferry-junction')!, id: 'a'.repeat(64) } };
  const sheets: Cost[] = [];
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    const cost = await costOf('sheet', one);
    if (round >= 0) sheets.push(cost);
  }
  const before = process.memoryUsage().rss;
  const packs = await costOf('class', source);
  const grown = process.memoryUsage().rss - before;
  return [
    ...rotaFigures(),
    {
      name: 'one-sheet',
      value: median(sheets.map((c) => c.clock)),
      unit: 'ms',
      target: { at: 'most', value: 150 },
    },
    { name: 'one-sheet-core-time', value: median(sheets.map((c) => c.cores)), unit: 'ms' },
    { name: 'packs-40', value: packs.clock / 1000, unit: 's', target: { at: 'most', value: 20 } },
    { name: 'packs-40-core-time', value: packs.cores / 1000, unit: 's' },
    {
      name: 'packs-40-size',
      value: packs.bytes / BYTES_A_MB,
      unit: 'MB',
      target: { at: 'most', value: 300 },
    },
    { name: 'packs-40-memory', value: grown / BYTES_A_MB, unit: 'MB', target: { at: 'most', value: 300 } },
    {
      name: 'packs-40-progress-told',
      value: packs.told,
      unit: 'times',
      target: { at: 'least', value: TEAMS },
    },
  ];
}
