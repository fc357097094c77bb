import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Finding, Reading, RunSummary, Verdict } from '../../shared/documents/verdict.ts';
import { answerKey, questionsOf } from '../../shared/judge/predict.ts';
import { textIn, type Wording } from '../../shared/wording/wording.ts';
import { oddsLines, steadinessLines } from './outlook-report.ts';

/** The verdict as lines of text for a terminal: goals, runs with their readings, findings, points. */
export function reportLines(challenge: Challenge, verdict: Verdict, words: Wording): string[] {
  return [
    textIn(challenge.sentence, 'en'),
    `${verdict.met ? 'Met' : 'Not met'}: ${verdict.total} of 100 points`,
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
    const run = result.run === undefined || verdict.runs.length < 2 ? '' : ` in run ${result.run + 1}`;
    const mark = result.met ? '✓' : goal.must ? '✗' : '–';
    const phrase = `${words.goals.margin(result, goal.formula)}${run} (margin ${number})`;
    return `  ${mark} ${sentence} ${phrase}; ${points.got} of ${points.of} points`;
  });
  return ['Goals', ...lines];
}

/** A challenge that is answered has no goals: what the makers' drawing answers. */
function keyLines(challenge: Challenge, words: Wording): string[] {
  const key = answerKey(challenge);
  const lines = questionsOf(challenge).map((question) => {
    const says = key.get(question.id);
    const choice = 'choices' in question && question.choices.find((one) => one.key === says);
    const answer = choice ? words.questions.choice(choice, challenge.sheet) : `${says}`;
    return `  ${words.questions.ask(question, challenge.sheet)} Answer: ${answer}.`;
  });
  return ['Teams answer questions here, and no drawing can meet it', ...lines];
}

/** What gives points beside the goals. */
const meritLines = (challenge: Challenge, { points }: Verdict, words: Wording): string[] =>
  points.slice(challenge.goals.length).map((line) => {
    const name = words.numbers.capital(words.points.reason(line, challenge));
    return `  ${name}: ${words.points.got(line)} points. ${words.points.because(line) ?? ''}`;
  });

function runLines(run: RunSummary, index: number, count: number, words: Wording): string[] {
  const which = count === 1 ? 'Run' : `Run ${index + 1} of ${count}`;
  const chance = run.probability === 1 ? '' : `, chance ${words.numbers.short(run.probability * 100, 1)} %`;
  const ending = `${words.actions.ending(run.ending)} after ${words.numbers.time(run.duration)}`;
  return [
    `${which} from the ${run.start}${chance}: ${ending}`,
    ...run.readings.map((r) => readingLine(r, words)),
  ];
}

function readingLine(reading: Reading, words: Wording): string {
  const name = reading.action ? words.actions.name(reading.action) : words.actions.unknown;
  const mark = reading.mark === undefined ? '' : ` (mark ${reading.mark})`;
  const acted = reading.acted
    ? `acts at ${at(reading.acted)} after ${words.numbers.time(reading.acted.t)}`
    : 'does not act before the end';
  return `  ${words.numbers.time(reading.t)}: reads ${[...reading.word].join(' ')}${mark}: ${name}, ${acted}`;
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
  if (findings.length === 0) return ['Nothing to look at.'];
  const lines = findings.map((finding) => {
    const { title, sentence } = words.findings.said(finding);
    return `  ${title} at ${at(finding.place.at)} mm (${words.judging.severity[finding.severity]}): ${sentence}`;
  });
  return [`${words.numbers.counted(findings.length, 'thing', 'things')} to look at`, ...lines];
}

const at = (p: { readonly x: number; readonly y: number }): string =>
  `${Math.round(p.x)}, ${Math.round(p.y)}`;
