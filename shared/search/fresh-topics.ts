import type { Goal } from '../documents/challenge.ts';
import type { Formula } from '../documents/formula.ts';
import type { FreshMarks, FreshTopic, FreshWords } from '../documents/fresh.ts';
import type { Kit } from '../documents/kit.ts';
import type { Area, Berth, Gate, Sheet } from '../documents/sheet.ts';
import { radians } from '../geometry/exact-math.ts';
import type { Mm } from '../geometry/units.ts';
import { rolled, type Sfc32 } from '../run/random.ts';
import {
  aSide,
  beginLine,
  between,
  endLine,
  type JunctionKind,
  type Laying,
  layAhead,
  layApproach,
  layJunction,
  layTurn,
  oneOf,
  onward,
  type Pose,
  startLaying,
  turned,
} from './fresh-lines.ts';

/** What a topic is laid with. */
export interface Room {
  readonly die: Sfc32;
  readonly kit: Kit;
  readonly marks: FreshMarks;
  readonly words: FreshWords;
  readonly w: Mm;
  readonly h: Mm;
}

/** A sheet with goals; whether they can be met with just so many marks is for the search to say. */
export interface Laid {
  readonly sheet: Sheet;
  readonly goals: readonly Goal[];
}

export const TOPICS: Readonly<Record<FreshTopic, (room: Room) => Laid>> = {
  park: layPark,
  pace: layPace,
  junction: (room) => layDecisions(room, ['fork', 'side']),
  crossing: (room) => layDecisions(room, ['crossing']),
  'turn-back': layTurnBack,
};

const must = (id: string, formula: Formula): Goal => ({ id, formula, must: true, weight: 1 });
const FINISH = must('finish', { kind: 'finish' });

/** mm: how far behind a line's beginning or end the middle of a robot in a berth stands. */
const IN_BERTH: Mm = 8;
const BEFORE_END: Mm = 12;
const RIM: Mm = 15;
/** mm of straight that a choice before a junction takes at the start pace: before, mark, after. */
const BEFORE_JUNCTION: Mm = 90;

const berthAt = ({ x, y, heading }: Pose, name: Berth['name']): Berth => ({
  name,
  at: { x, y },
  heading: radians(heading % 360),
  r: RIM,
});

function beginning({ die, kit, w, h }: Room): Laying {
  const heading = oneOf(die, [0, 90, 180, 270]);
  return startLaying(kit, { x: between(die, 45, w - 45), y: between(die, 45, h - 45), heading });
}

function sheetOf(room: Room, laying: Laying, start: Pose, more: Partial<Sheet>): Sheet {
  endLine(laying);
  return {
    w: room.w,
    h: room.h,
    start: berthAt(start, room.words.start),
    gates: [],
    areas: [],
    keepOut: [],
    given: { lines: [...laying.lines], marks: [] },
    ...more,
  };
}

/** The finish at the end of the way, facing back. */
const finishAt = ({ words }: Room, end: Pose): Berth =>
  berthAt(turned(onward(end, -BEFORE_END), 180), words.finish);

/** One junction a mark, and the finish behind the last. */
function layDecisions(room: Room, kinds: readonly JunctionKind[]): Laid {
  const { die, marks } = room;
  const laying = beginning(room);
  const start = onward(laying.pose, IN_BERTH);
  for (let i = 0; i < marks; i++) {
    layApproach(laying, die, BEFORE_JUNCTION + between(die, 0, 30));
    layJunction(laying, die, oneOf(die, kinds));
  }
  layAhead(laying, between(die, 60, 80));
  return { sheet: sheetOf(room, laying, start, { finish: finishAt(room, laying.pose) }), goals: [FINISH] };
}

/** Junctions to be decided, then a straight with the area to park in. */
function layPark(room: Room): Laid {
  const { die, marks, words } = room;
  const laying = beginning(room);
  const start = onward(laying.pose, IN_BERTH);
  for (let i = 1; i < marks; i++) {
    layApproach(laying, die, BEFORE_JUNCTION + between(die, 0, 30));
    layJunction(laying, die, oneOf(die, ['fork', 'side']));
  }
  layApproach(laying, die, between(die, 130, 160));
  const middle = onward(laying.pose, -between(die, 40, 60));
  const polygon = [
    [-22, -24],
    [22, -24],
    [22, 24],
    [-22, 24],
  ].map(([along, across]) => corner(middle, along!, across!));
  const area: Area = { id: 'landing', name: words.area, polygon };
  return {
    sheet: sheetOf(room, laying, start, { areas: [area] }),
    goals: [must('park', { kind: 'park', area: 'landing' })],
  };
}

function corner(pose: Pose, along: Mm, across: Mm): { x: Mm; y: Mm } {
  const { x, y } = onward(turned(onward(pose, along), 90), across);
  return { x, y };
}

/** One line; a stretch at another pace: one mark begins it, a second ends it, a third makes it faster. */
function layPace(room: Room): Laid {
  const { die, marks } = room;
  const laying = beginning(room);
  const start = onward(laying.pose, IN_BERTH);
  const longer = marks === 3 ? 40 : 0;
  layAhead(laying, between(die, 120, 150) + longer);
  const turns = marks === 3 ? 2 : 1 + rolled(die, 2);
  for (let i = 0; i < turns; i++) {
    layTurn(laying, aSide(die), oneOf(die, [25, 30, 40]));
    layAhead(laying, between(die, 110, 160) + longer);
  }
  const length = between(die, 100, 140);
  const stretch: Formula = {
    kind: 'stretches',
    pace: marks === 3 ? 'fast' : 'brisk',
    how: marks === 1 ? 'at-least' : 'exactly',
    count: 1,
    length,
  };
  const steady = must('steady', { kind: 'pace-at-end', pace: 'steady' });
  return {
    sheet: sheetOf(room, laying, start, { finish: finishAt(room, laying.pose) }),
    goals: [must('stretch', stretch), ...(marks > 1 ? [steady] : []), FINISH],
  };
}

/**
 * A gate near a dead end. With one mark the finish lies behind the start; with two there is a junction on
 * the way back; with three it is passed on the way out too.
 */
function layTurnBack(room: Room): Laid {
  const { die, marks, words } = room;
  const laying = beginning(room);
  const side = aSide(die);
  const end = laying.pose;
  const before = marks === 3 ? BEFORE_JUNCTION + between(die, 5, 25) : between(die, 90, 120);
  const beyond = between(die, 170, 200);
  layAhead(laying, before + beyond);
  const junction = onward(end, before);
  const past = onward(laying.pose, -between(die, 45, 55));
  const gate: Gate = {
    id: 'bakery',
    name: words.gate,
    a: corner(past, 0, -16),
    b: corner(past, 0, 16),
  };
  const goals = [
    must('gate', { kind: 'gates', gates: ['bakery'], ordered: true }),
    must('back', { kind: 'turn-back', count: 1 }),
    FINISH,
  ];
  if (marks === 1) {
    const finish = berthAt(onward(end, BEFORE_END), words.finish);
    return { sheet: sheetOf(room, laying, junction, { gates: [gate], finish }), goals };
  }
  const start = marks === 3 ? onward(end, IN_BERTH) : onward(junction, 25);
  beginLineAt(laying, turned(junction, 90 * side));
  layAhead(laying, between(die, 70, 90));
  const finish = finishAt(room, laying.pose);
  return { sheet: sheetOf(room, laying, start, { gates: [gate], finish }), goals };
}

function beginLineAt(laying: Laying, pose: Pose): void {
  beginLine(laying, pose.heading);
  laying.from = pose;
  laying.pose = pose;
}
