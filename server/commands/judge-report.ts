import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Finding, Reading, RunSummary, Verdict } from '../../shared/documents/verdict.ts';
import { answerKey, questionsOf } from '../../shared/judge/predict.ts';
import { type Locale, textIn, type Wording, wording } from '../../shared/wording/wording.ts';
import { oddsLines, steadinessLines } from './outlook-report.ts';

/** The verdict as lines of text for a terminal: goals, runs with their readings, findings, points. */
export function reportLines(challenge: Challenge, verdict: Verdict, locale: Locale): string[] {
  const words = wording(locale);
  return [
    textIn(challenge.sentence, locale),
    words.report.result(verdict.met, verdict.total),
    '',
    ...(challenge.play === 'predict' ? keyLines(challenge, words) : goalLines(challenge, verdict, words)),
    ...meritLines(challenge, verdict, words),
    '',
    ...verdict.runs.flatMap((run, i) => runLines(run, i, verdict.runs.length, words)),
    '',
    ...outlookLines(verdict, words),
    ...findingLines(verdict.findings, words),
  ];
}

function goalLines(challenge: Challenge, verdict: Verdict, words: Wording): string[] {
  const lines = challenge.goals.map((goal, i) => {
    const result = verdict.goals[i]!;
    const points = verdict.points[i]!;
    const sentence = words.goals.sentence(goal.formula, challenge.sheet, goal.start).replace(/\.$/, ':');
    const places = result.unit === 'ratio' ? 2 : 1;
    const unit = result.unit === 'mm' || result.unit === 's' ? ` ${result.unit}` : '';
    const number = `${words.numbers.short(result.margin, places)}${unit}`;
    const run = result.run === undefined || verdict.runs.length < 2 ? '' : words.report.inRun(result.run + 1);
    const mark = result.met ? '✓' : goal.must ? '✗' : '–';
    const phrase = `${words.goals.margin(result, goal.formula)}${run} ${words.report.margin(number)}`;
    return `  ${mark} ${sentence} ${phrase}; ${words.report.points(points.got, points.of)}`;
  });
  return [words.report.goals, ...lines];
}

/** A challenge that is answered has no goals: what the makers' drawing answers. */
function keyLines(challenge: Challenge, words: Wording): string[] {
  const key = answerKey(challenge);
  const lines = questionsOf(challenge).map((question) => {
    const says = key.get(question.id);
    const choice = 'choices' in question && question.choices.find((one) => one.key === says);
    const answer = choice ? words.questions.choice(choice, challenge.sheet) : `${says}`;
    return `  ${words.questions.ask(question, challenge.sheet)} ${words.report.answer(answer)}`;
  });
  return [words.report.answers, ...lines];
}

/** What gives points beside the goals. */
const meritLines = (challenge: Challenge, { points }: Verdict, words: Wording): string[] =>
  points.slice(challenge.goals.length).map((line) => {
    const name = words.numbers.capital(words.points.reason(line, challenge));
    return `  ${words.report.merit(name, words.points.got(line), words.points.because(line) ?? '')}`;
  });

function runLines(run: RunSummary, index: number, count: number, words: Wording): string[] {
  const { report, numbers } = words;
  const which = report.run(index + 1, count);
  const chance = run.probability === 1 ? '' : report.chance(numbers.short(run.probability * 100, 1));
  const ending = report.ended(words.actions.ending(run.ending), numbers.time(run.duration));
  return [
    `${which} ${report.from(run.start)}${chance}: ${ending}`,
    ...run.readings.map((r) => readingLine(r, words)),
  ];
}

function readingLine(reading: Reading, words: Wording): string {
  const name = reading.action ? words.actions.name(reading.action) : words.actions.unknown;
  const mark = reading.mark === undefined ? '' : words.report.mark(reading.mark);
  const acted = reading.acted
    ? words.report.acts(at(reading.acted), words.numbers.time(reading.acted.t))
    : words.report.actsNot;
  const bands = words.report.reads([...reading.word].join(' '));
  return `  ${words.numbers.time(reading.t)}: ${bands}${mark}: ${name}, ${acted}`;
}

/** Chances and robots, which only entries have. */
function outlookLines({ odds, steadiness }: Verdict, words: Wording): string[] {
  const lines = [
    ...(odds ? oddsLines(odds, words) : []),
    ...(steadiness ? steadinessLines(steadiness, words) : []),
  ];
  return lines.length > 0 ? [...lines, ''] : [];
}

function findingLines(findings: readonly Finding[], words: Wording): string[] {
  if (findings.length === 0) return [words.report.nothing];
  const lines = findings.map((finding) => {
    const { title, sentence } = words.findings.said(finding);
    const severity = words.judging.severity[finding.severity];
    return `  ${words.report.finding(title, at(finding.place.at), severity)}: ${sentence}`;
  });
  return [words.report.things(findings.length), ...lines];
}

const at = (p: { readonly x: number; readonly y: number }): string =>
  `${Math.round(p.x)}, ${Math.round(p.y)}`;
