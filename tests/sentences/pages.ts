import { VARIANTS } from '../../shared/documents/challenge.ts';
import { WEATHERS } from '../../shared/documents/outlook.ts';
import { HINTS, RETURN_REASONS } from '../../shared/room/coaching.ts';
import { OWN_SHEETS } from '../../shared/room/conditions.ts';
import { EMBLEMS } from '../../shared/room/state.ts';
import { PRINT_KINDS } from '../../shared/wire/print.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { each } from './each.ts';

const COUNTS = [0, 1, 2, 7, 12] as const;
const TEAM = 'Ancla';
const WORD = 'plum-42';
const WHEN = '4.3.2026';

/** Functions that want nothing but counts, texts or what the schema lists: by their place alone. */
export function plainOnes(words: Wording): void {
  const { desk, board, tablet, print, rota, check, learning } = words;
  for (const n of COUNTS) {
    each([desk.gathering.teams, desk.gathering.berth, desk.briefing.topic, desk.briefing.minutes], (f) =>
      f(n),
    );
    each([desk.building.title, desk.building.entry, desk.building.points, desk.building.need.stuck], (f) =>
      f(n),
    );
    each([desk.building.need.tries, desk.coaching.left, desk.picture.failed, tablet.notes.back], (f) => f(n));
    each([desk.team.entry, desk.team.points], (f) => f(n));
    each([desk.closing.round, desk.status.waiting, desk.status.lost], (f) => f(n));
    each([desk.late.waiting, desk.late.takeAll, desk.undo.lateTaken, desk.undo.lateLeft], (f) => f(n));
    each([board.gather.berth, board.gather.teams, board.show.entry], (f) => f(n));
    each([board.standings.more, board.brief.seconds, desk.building.extend], (f) => f(n));
    each([tablet.waiting.berth, tablet.building.things, tablet.building.marksOnly], (f) => f(n));
    each([tablet.building.mendAfter, tablet.building.timeLeft, tablet.trying.times], (f) => f(n));
    each([tablet.handing.entry, tablet.handing.points, tablet.showing.points, tablet.closing.points], (f) =>
      f(n),
    );
    each([print.entry, print.packs.lines.teams, rota.charge, rota.hoursOf, rota.removeHours], (f) => f(n));
    each([words.device.textSize, words.check.desk.addressNow as (n: unknown) => string], (f) => f(n));
    for (const of of [2, 12] as const) {
      desk.picture.trips(n, of);
      desk.picture.worst(`${of} mm`, '');
      each([words.judging.stands.outOf, desk.showing.at, tablet.trying.seconds, tablet.building.oneOf], (f) =>
        f(n, of),
      );
      each([tablet.predicting.which, tablet.predicting.answered, print.questions.robots], (f) => f(n, of));
      each([print.page.making, print.page.previewOf, words.questions.howMany], (f) => f(n, of));
      each([words.questions.result, board.building.handedIn, learning.tries, learning.reasons], (f) =>
        f(n, of),
      );
    }
    board.show.oneOf(n, 0.35);
    board.show.oneOf(n, 1);
  }
  each([desk.preparing.goOnWith, desk.preparing.openedAt, desk.showing.heatWith, desk.seats.of], (f) =>
    f(WORD),
  );
  each([desk.seats.codeUntil, desk.seats.putBackTeam, desk.undo.removed, desk.undo.freed], (f) => f(TEAM));
  each([desk.links.made, desk.links.address, desk.links.row, desk.links.revokeThis], (f) => f(WORD));
  each([desk.links.giveBackThis, desk.keeping.moreOf, desk.keeping.title, desk.keeping.eraseSure], (f) =>
    f(WORD),
  );
  each([desk.keeping.erasing, desk.keeping.until, print.about, print.packs.title, print.packs.team], (f) =>
    f(WORD),
  );
  each([print.page.playing, print.strip.should, print.gauge.band, print.gauge.plain], (f) => f(WORD));
  each([print.questions.key, tablet.building.sheet, tablet.trying.robot, tablet.handing.scored], (f) =>
    f(WORD),
  );
  each([check.desk.try, board.show.pace, words.judging.form, words.replay.read], (f) => f(WORD));
  each([desk.queue.takeOff, desk.queue.sooner, desk.queue.later, desk.queue.next, desk.undo.unqueued], (f) =>
    f(WORD),
  );
  each([desk.preparing.nextLessonOf, desk.coaching.to, desk.undo.noteSent], (f) => f(TEAM));
  each(['gone', 'not-playable'] as const, desk.queue.stuck);
  desk.undo.returned(TEAM, 2);
  desk.building.need.same(3, WORD);
  desk.building.spent(90_000);
  desk.picture.clock(90_000);
  desk.building.tripped(WORD, 3);
  desk.showing.entry(TEAM, 2);
  desk.keeping.soon(WORD, WHEN);
  each(['desk', 'age'] as const, (why) => desk.keeping.erased(WORD, WHEN, why));
  each([-1, 30_000, 300_000], board.building.timeLeft);
  board.gather.taken(3, TEAM);
  board.show.label(TEAM, 2);
  check.desk.place('192.0.2.1', 'sala');
  words.replay.does('x', true);
  words.replay.does('x', false);
  words.replay.does(null, false);
}

export function listedOnes(words: Wording): void {
  const { desk, board, tablet, print, learning } = words;
  each(EMBLEMS, words.emblems.name);
  each(['prepare', 'gather', 'brief', 'build', 'show', 'drive', 'close'] as const, desk.step);
  each(['draw', 'fill-in', 'predict', 'mend'] as const, (play) => [
    desk.briefing.play(play),
    desk.briefing.playSentence(play),
  ]);
  each(['drawing', 'answering', 'trying', 'handed-in', 'away'] as const, (doing) => [
    desk.building.doing(doing),
    board.building.doing(doing),
  ]);
  each(PRINT_KINDS, (kind) => [print.page.kind(kind), print.page.note(kind)]);
  each(['A4', 'Letter', 'Tabloid'] as const, print.page.paperName);
  each(['ink', 'dots'] as const, print.page.line);
  each(['colour', 'paint'] as const, print.page.mark);
  each(['predict', 'two-travellers', 'mend'] as const, print.questions.title);
  each(['least', 'nominal', 'most'] as const, (which) => print.gauge.width('6 mm', which));
  each([[], ['rápido']], print.fit.noMark);
  each([print.fit.at, print.fit.circleHow, print.fit.bandsHow], (f) => f('…'));
  print.fit.radius(80);
  print.questions.mark(2, '…');
  print.chart.foot(['C', 'A'], 'Kit');
  print.tile(1, 4, 2, 3);
  each(
    [
      [false, true],
      [true, false],
      [true, true],
      [false, false],
    ] as const,
    ([left, above]) => print.joining(left, above),
  );
  each(['cm', 'in'] as const, words.device.unit);
  each(['kit', 'other'] as const, words.device.inksAre);
  each(WEATHERS, (weather) => [
    desk.conditions.asChallenge(weather),
    desk.conditions.asClass(weather),
    desk.conditions.judgedIn(weather),
    desk.undo.weather(weather),
    desk.undo.teamWeather('…', weather),
  ]);
  each(OWN_SHEETS, desk.conditions.sheet);
  each([null, ...VARIANTS], (variant) => [desk.conditions.asBerth(variant), tablet.notes.sheet(variant)]);
  desk.undo.sheet('…', '…');
  each(['after-try', 'place', 'sentence', 'mend'] as const, (step) => [
    learning.step(step),
    learning.asClass(step),
  ]);
  each(['shown', 'no-emblem', 'not-at-all'] as const, learning.wish);
  each([true, false], (made) => learning.tried('…', made));
  each(HINTS, tablet.notes.hint);
  each(RETURN_REASONS, (reason) => [tablet.notes.returned(reason), desk.coaching.reason(reason)]);
  each(['straight', 'curve', 'freehand', 'mark', 'bands', 'move', 'rub'] as const, (tool) => [
    tablet.building.tool(tool),
    tablet.building.how(tool, true),
    tablet.building.how(tool, false),
  ]);
  each(
    [
      'only-marks',
      'given',
      'no-marks-left',
      'too-short',
      'line-too-short-for-mark',
      'too-many-bands',
      'drawing-full',
      'not-there',
    ] as const,
    (code) => tablet.building.notDone(code, 3),
  );
  each(['end', 'berth', 'line', 'tangent', 'angle', 'parallel', 'grid', 'free'] as const, (why) =>
    tablet.building.caught(why, 'B', 45),
  );
  each([90, 0], (degrees) => tablet.building.caught('angle', 'B', degrees));
  each(['straight', 'quarter', 'half'] as const, tablet.building.bent);
  words.keys.place('12 cm', '3 cm');
  each([words.keys.mark, words.keys.inBox], (f) => f('…'));
  each(['end', 'corner', 'middle', 'line', 'paper'] as const, words.keys.under);
  tablet.building.inkAndMarks('12 cm', 3);
  tablet.trying.way(2, '…');
  tablet.trying.wayFrom(2, 'B', '…');
  tablet.trying.chance(0.35);
  each([[], [2], [1, 3]], tablet.trying.decides);
  each([true, false], tablet.handing.late1);
  board.show.ended('x', 12.5);
  board.together({ teams: 4, challenges: 2, entries: 9, teamsHandedIn: 4, teamsMet: 1, teamsBetter: 2 });
  board.together({ teams: 4, challenges: 1, entries: 1, teamsHandedIn: 1, teamsMet: 0, teamsBetter: 0 });
  board.together({ teams: 4, challenges: 0, entries: 0, teamsHandedIn: 0, teamsMet: 0, teamsBetter: 0 });
}
