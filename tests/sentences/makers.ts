import type { Impossibility } from '../../shared/documents/par.ts';
import { PLAN_PHASES } from '../../shared/prep/lesson-plan.ts';
import { PREP_CHECKS } from '../../shared/prep/prep-check.ts';
import { SUPPLIES } from '../../shared/prep/supplies.ts';
import { LIGHTS } from '../../shared/room/calibration.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { each } from './each.ts';

const IMPOSSIBLE: readonly Impossibility[] = [
  { code: 'no-start', berth: 'finish' },
  { code: 'out-of-reach', goal: 'g', place: { en: 'p', es: 'p' } },
  { code: 'no-box' },
  { code: 'action-missing', goal: 'g', action: 'park' },
  { code: 'marks-needed', needed: 3, allowed: 1 },
  { code: 'goal-never-met', goal: 'g', marks: 2, margin: -34, unit: 'mm' },
  { code: 'goal-never-met', goal: 'g', marks: 2, margin: -1, unit: 'count' },
  { code: 'goals-clash', goals: ['g', 'h'], marks: 2 },
  { code: 'goals-clash', goals: ['g'], marks: 0 },
  { code: 'never-steady', marks: 2, driven: 1 },
  { code: 'never-steady', marks: 2, driven: 12 },
];

export function ofMakers({ par, library, judging }: Wording): void {
  each(IMPOSSIBLE, par.impossible);
  each(['exhaustive', 'bound', 'model'] as const, par.proof);
  library.standing({ playable: true, par: 'known' });
  library.standing({ playable: true, par: 'not-known' });
  library.standing({ playable: false, missing: [], doneByItself: true });
  library.standing({ playable: false, missing: [{ kind: 'park' }, { kind: 'turn-back' }] });
  judging.place([]);
  each(
    [
      'word-twice',
      'reverse-without-meaning',
      'equal-neighbours',
      'two-way-turns-back',
      'ink-not-in-kit',
      'too-few-bands',
      'too-many-bands',
      'ink-letter-twice',
      'colours-too-close',
      'out-of-order',
      'out-of-range',
      'off-the-sheet',
      'box-too-small',
    ] as const,
    judging.challengeProblem,
  );
  each(
    [
      'mark-without-line',
      'mark-past-end',
      'id-already-given',
      'unknown-ink',
      'too-many-pieces',
      'too-many-marks',
      'too-much-line',
      'too-many-meetings',
      'finish-missing',
      'start-missing',
      'size-zero',
    ] as const,
    (code) => {
      judging.challengeProblem(code);
      judging.refusal({
        path: [],
        code,
        ink: 'Q',
        measured: 12_345,
        allowed: 12_000,
      } as unknown as Parameters<typeof judging.refusal>[0]);
    },
  );
  each(
    [
      'invalid_type',
      'invalid_value',
      'invalid_union',
      'invalid_format',
      'too_big',
      'too_small',
      'unrecognized_keys',
      'line-of-length-zero',
      'same-id-twice',
    ],
    judging.form,
  );
}

export function ofReports({ report }: Wording): void {
  each([true, false], (met) => report.result(met, 75));
  each(['start', 'finish'] as const, (start) => [
    report.from(start),
    report.odds(start, true, '…'),
    report.odds(start, false, '…'),
  ]);
  each(['Challenge', 'Design', 'Kit'] as const, report.what);
  each([true, false], (orKey) => report.noFile('a.json', orKey));
  each([report.margin, report.answer, report.chance, report.mark, report.reads, report.steadiness], (say) =>
    say('…'),
  );
  each([report.inRun, report.things], (say) => say(2));
  each([report.points, report.run], (say) => say(1, 2));
  report.run(1, 1);
  report.merit('m', '5', '…');
  report.ended('…', '6 s');
  report.acts('1, 2', '6 s');
  report.finding('…', '1, 2', '…');
  report.decides('1, 2', '50 %', '…');
  report.strays(3, '…', '', '1, 2');
  report.notJson('a.json', '…');
}

export function ofRefusals({ refusals }: Wording): void {
  for (const phase of ['gather', 'brief', 'build', 'show', 'drive', 'close'] as const)
    refusals['not-now']({ code: 'not-now', phase } as Parameters<(typeof refusals)['not-now']>[0]);
  for (const why of [
    'no-challenge',
    'no-drawing',
    'nothing-drawn',
    'one-end',
    'no-fault',
    'not-asked',
    'no-page',
  ] as const)
    refusals['cannot-print']({ code: 'cannot-print', why });
  for (const say of Object.values(refusals))
    (say as (refusal: unknown) => string)({
      most: 40,
      key: 'x',
      path: 'a.b',
      problem: 'size-zero',
      more: 2,
      bytes: 5000,
      phase: 'build',
      why: 'no-page',
    });
}

export function ofBefore({ calibration, prepCheck, supplies, lessonPlan, kept }: Wording): void {
  each(LIGHTS, (light) => [
    calibration.lightIs(light),
    calibration.done(light, '10:30'),
    calibration.line(3, light),
    calibration.undo.calibrated(3, light),
  ]);
  each([1, 12], (n) => [
    calibration.robot(n),
    calibration.count(n, 12),
    calibration.takeBack(n),
    supplies.forTeams(n),
    supplies.spare(n),
    lessonPlan.title(n),
    lessonPlan.lasts(n),
    lessonPlan.span(n, 20),
    lessonPlan.questions(n),
    lessonPlan.room('plum-42', n),
    kept.allNote(n, 2, 3),
  ]);
  lessonPlan.room('plum-42', 0);
  each(PREP_CHECKS, prepCheck.said);
  each([prepCheck.host, prepCheck.tryTablet, prepCheck.kit], (say) => say('192.0.2.1:4310'));
  prepCheck.done(3, 8);
  const kit = { line: '5 mm', inks: ['C', 'A', 'V'] };
  each(SUPPLIES, (supply) => [supplies.what(supply, kit), supplies.note(supply)]);
  each(PLAN_PHASES, (phase) => [
    lessonPlan.phase(phase),
    lessonPlan.does(phase),
    lessonPlan.say(phase),
    lessonPlan.materials(phase),
    lessonPlan.careful(phase),
  ]);
  const { open, challenge } = lessonPlan;
  each([open.link, open.without, open.tablets], (say) => say('192.0.2.1:4310'));
  each([challenge.teaches, challenge.mistakes, challenge.ask], (say) => say('…'));
  each([kept.eraseMade, kept.undo.made], (say) => say('…'));
  each([kept.challenge, kept.kit], (say) => say('…', '4.3.2026'));
  each([kept.until, kept.eraseRoom, kept.revokeLink, kept.undo.link], (say) => say('plum-42'));
  kept.undo.desk('plum-42');
  each([kept.room, kept.deskLink, kept.roomLink], (say) => say('plum-42', '4.3.2026'));
  each(
    ['device', 'rota', 'check', 'kits', 'keys', 'plays', 'outbox', 'drawings', 'files', 'other'] as const,
    kept.hereThing,
  );
}

export function ofPreparing({ rota, check }: Wording): void {
  const watched = { date: '2026-03-04', from: 480, to: 600 };
  rota.hours(watched);
  const codes = [
    'nobody-watches',
    'at-night',
    'hours-overlap',
    'hours-backwards',
    'too-many-robots',
    'bad-number',
  ];
  for (const code of codes)
    for (const robot of [null, 3])
      rota.refusal({ code, watched, most: 60, robot } as unknown as Parameters<typeof rota.refusal>[0]);
  const plan = (turns: number, optimal: boolean, finish = true) =>
    ({
      turns: Array.from({ length: turns }),
      finish: finish && watched && { date: '2026-03-04', minute: 600 },
      length: 125,
      bound: 60,
      optimal,
    }) as unknown as Parameters<typeof rota.summary>[0];
  each([plan(1, true), plan(12, false), plan(0, true, false)], (one) => rota.summary(one, (date) => date));
  rota.notReady([{ robot: 3, minutes: 20 }]);
  rota.notReady([
    { robot: 3, minutes: 20 },
    { robot: 4, minutes: 60 },
  ]);
  each([[3], [3, 4]], rota.fullAlready);
  const reports = [
    { roundTripMs: 12, pageMs: 900, live: true },
    { roundTripMs: 900, pageMs: 6500, live: true },
    { roundTripMs: 12, pageMs: 900, live: false },
  ];
  for (const report of reports) {
    check.verdict(report);
    check.figures(report);
    check.desk.arrived({ visits: 3, lastAgo: 4000, check: { ...report, ago: 90_000 } } as Parameters<
      typeof check.desk.arrived
    >[0]);
  }
  check.desk.arrived({ visits: 1, lastAgo: 4000, check: null } as Parameters<typeof check.desk.arrived>[0]);
}
