import type { Drawing } from '../../../shared/documents/design.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import type { RunEvent, RunEventOf, Trace } from '../../../shared/documents/trace.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { type World, worldOf } from '../../../shared/run/world.ts';
import { layOut } from '../../../shared/track/layout.ts';

/** An A4 sheet, landscape, with a boathouse at the left and a lighthouse at the right. */
export const SHEET: Sheet = {
  w: 297,
  h: 210,
  start: { name: { en: 'boathouse' }, at: { x: 30, y: 105 }, heading: 0, r: 15 },
  finish: { name: { en: 'lighthouse' }, at: { x: 260, y: 105 }, heading: Math.PI, r: 15 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};

export const EQUAL_BANDS = [5.5, 5.5, 5.5, 5.5] as const;

export const world = (drawing: Drawing, change: Partial<Sheet> = {}, kit: Kit = DEMO_KIT): World => {
  const sheet = { ...SHEET, ...change };
  return worldOf(layOut(sheet, drawing), sheet, kit);
};

export const eventsOf = <K extends RunEvent['kind']>(trace: Trace, kind: K): RunEventOf<K>[] =>
  trace.events.filter((event): event is RunEventOf<K> => event.kind === kind);

export const kindsOf = (trace: Trace): string[] => trace.events.map((event) => event.kind);
