import type { Design } from '../../shared/documents/design.ts';
import { FRESH_MARKS, FRESH_TOPICS } from '../../shared/documents/fresh.ts';
import { MISREADINGS } from '../../shared/documents/misread.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { each } from './each.ts';

const RUN_WISHES = [
  'finish',
  'park',
  'stretches',
  'pace-at-end',
  'gates',
  'every-gate',
  'keep-out',
  'stay-on-paper',
  'time',
  'turn-back',
  'read-marks',
  'act-in',
  'way',
  'mark-limit',
  'ink-limit',
  'decided',
  'steadiness',
];
const MOMENT_WISHES = [
  'finish',
  'stretches',
  'gates',
  'every-gate',
  'keep-out',
  'stay-on-paper',
  'turn-back',
  'read-marks',
  'act-in',
  'way',
  'in-area',
  'pace',
];
const NUMBERS = [
  ['stretches', 'count'],
  ['stretches', 'length'],
  ['time', 'from'],
  ['time', 'to'],
  ['turn-back', 'count'],
  ['read-marks', 'count'],
  ['way', 'length'],
  ['mark-limit', 'most'],
  ['ink-limit', 'most'],
  ['steadiness', 'least'],
] as const;
const OPERATORS = ['not', 'and', 'or', 'always', 'eventually', 'until', 'lasting'] as const;

function ofWishes({ wish }: Wording['builder']): void {
  each(RUN_WISHES, wish.run);
  each(MOMENT_WISHES, wish.moment);
  each(OPERATORS, (kind) => [wish.operator(kind), wish.part(kind, 0), wish.part(kind, 1)]);
  each(NUMBERS, ([kind, key]) => wish.number(kind, key));
  each(['pace', 'how', 'how-much', 'act', 'area', 'area-or-finish'] as const, wish.choice);
  each(['exactly', 'at-least', 'at-most'] as const, wish.how);
  each(['wait', 'signal'] as const, wish.act);
  each([1, 3], (n) => [wish.lessOf(n), wish.gate(n), wish.lessGate(n)]);
  wish.ofRobots(20);
}

/** What the builder of challenges says. */
export function ofBuilding({ builder }: Wording): void {
  ofWishes(builder);
  const { places, lines, goals, asking, rules, found, fresh, own } = builder;
  each(['start', 'finish', 'gate', 'area', 'keep-out', 'box'] as const, (kind) => [
    places.kind(kind),
    places.across(kind, 2),
    places.down(kind, 2),
  ]);
  each(['all', 'heading', 'corner'] as const, (part) => places.handle('Faro', part, 3));
  each(['given', 'begin', 'own'] as const, (layer) => [lines.layer(layer), lines.note(layer)]);
  each(['both', 'start', 'finish'] as const, (who) => [goals.who(who), rules.from(who)]);
  each(['end', 'marks', 'pace', 'how-many'] as const, asking.kind);
  each(['mirrored', 'turned'] as const, rules.variant);
  goals.open('2');
  goals.removeThis('2');
  asking.removeThis(2);
  each([0, 1, 2, 7], (n) => [found.met(n), found.metByInk('12 cm', n)]);
  found.goal(2);
  found.open('1200');
  each([0, 1, 2], (sided) => {
    const difficulty = { marks: 2, sided, slack: 1.4, searched: 1200, score: 5 };
    return [found.counts(difficulty), found.slack(difficulty), found.searched(difficulty)];
  });
  found.score(5);
  each(MISREADINGS, (misreading) => found.misreading(misreading));
  found.misreading('ink-mistaken', ['coral', 'agua']);
  const drawn: Design = { version: 1, drawing: { lines: [], marks: [] } };
  each([true, false], (met) => found.misread({ misreading: 'acts-at-once', design: drawn, met }));
  found.misread({ misreading: 'acts-at-once', design: null, met: false });
  each(FRESH_TOPICS, fresh.about);
  each(FRESH_MARKS, fresh.hard);
  each(['Faro'], (title) => [own.erased(title), own.copyOf(title)]);
  own.badValue('sheet.w', '…');
  each(['cm', 'in'] as const, builder.unit);
}
