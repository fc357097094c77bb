import type { Wording } from '../../shared/wording/wording.ts';
import { each } from './each.ts';

const AT = { x: 42, y: 150 } as const;
const NAME = 'Faro';

/** The sheet in words, and how a device reads it aloud. */
export function ofSheet({ reading, device }: Wording): void {
  each([reading.start, reading.finish, reading.gate, reading.area, reading.keepOut], (f) => f(NAME, AT));
  reading.box(NAME, AT, { x: 92, y: 170 });
  reading.place(AT);
  reading.lineNumber(2);
  each([true, false], (given) => reading.line(1, given, NAME, NAME, 120));
  each([null, 'más lento'], (back) => reading.mark(40, 'más rápido', back));
  each([-90, 90], (turn) => [reading.corner(80, 90, turn), reading.curve(30, turn, 25)]);
  each([[2], [2, 3]], (met) => reading.junction(60, met));
  each(['on', 'off'] as const, device.voiceIs);
}
