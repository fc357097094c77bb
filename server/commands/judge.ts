import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type * as z from 'zod/mini';
import { Challenge } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import { Kit } from '../../shared/documents/kit.ts';
import type { ChallengeProblem, DocumentPath } from '../../shared/documents/refusal.ts';
import { LOCALES, type Locale, parseDocument, textIn, writeDocument } from '../../shared/documents/values.ts';
import { Verdict } from '../../shared/documents/verdict.ts';
import { checkChallenge } from '../../shared/judge/check-challenge.ts';
import { judge } from '../../shared/judge/judge.ts';
import { checkKit } from '../../shared/kit/check-kit.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { KitFile } from '../../shared/wire/kits.ts';
import { wording } from '../../shared/wording/wording.ts';
import { reportLines } from './judge-report.ts';

/**
 * `npm run judge -- --challenge FILE|KEY --design FILE [--kit FILE] [--json] [--language en|es]`; with `--list` instead of both,
 * how each ready challenge stands with the kit.
 * Exit code 0: met, 1: not met, 2: something that was given is not valid.
 */

const EXIT = { met: 0, notMet: 1, invalid: 2 } as const;
const USAGE = `Usage: npm run judge -- --challenge FILE|KEY --design FILE [--kit FILE] [--json] [--language ${LOCALES.join('|')}]
   or: npm run judge -- --list [--kit FILE] [--language ${LOCALES.join('|')}]`;

/** What the command was asked to speak; English until that is known. */
let locale: Locale = 'en';
let words = wording(locale);
function speak(asked: string): void {
  const known = LOCALES.find((one) => one === asked);
  if (!known) throw new Invalid(USAGE);
  locale = known;
  words = wording(known);
}

type What = 'Challenge' | 'Design' | 'Kit';

/** Ends the command with a sentence for a person. */
class Invalid extends Error {}

const wrongValue = (what: What, path: DocumentPath, problem: string): Invalid =>
  new Invalid(`${words.report.what(what)}: ${words.judging.place(path)} ${problem}`);

const unsound = (what: What, { path, code }: ChallengeProblem): Invalid =>
  wrongValue(what, path, `(${code}): ${words.judging.challengeProblem(code)}`);

function readJson(what: What, file: string): unknown {
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch {
    throw new Invalid(`${words.report.what(what)}: ${words.report.noFile(file, what === 'Challenge')}`);
  }
  try {
    return JSON.parse(text);
  } catch (error) {
    const why = error instanceof Error ? error.message : '';
    throw new Invalid(`${words.report.what(what)}: ${words.report.notJson(file, why)}`);
  }
}

function readDocument<T>(what: What, schema: z.ZodMiniType<T, unknown>, file: string): T {
  const parsed = parseDocument(schema, readJson(what, file));
  if (parsed.ok) return parsed.value;
  const problem = parsed.problems[0]!;
  throw wrongValue(what, problem.path, `${words.judging.form(problem.code)} (${problem.code}).`);
}

/** The kit of ready challenges: the demo kit unless another is given, as the desk saves it or bare. */
function readKit(file: string | undefined): Kit {
  if (file === undefined) return DEMO_KIT;
  const saved = parseDocument(KitFile, readJson('Kit', file));
  const kit = saved.ok ? saved.value.kit : readDocument('Kit', Kit, file);
  const problem = checkKit(kit).find(({ severity }) => severity === 'wrong');
  if (problem) throw unsound('Kit', problem);
  return kit;
}

function readChallenge(name: string, kit: Kit): Challenge {
  const ready = readyChallenges(kit).find((one) => one.key === name);
  if (ready && !ready.playable)
    throw new Invalid(`${words.report.what('Challenge')}: ${name}. ${words.library.standing(ready)}`);
  const challenge = ready?.playable ? ready.challenge : readDocument('Challenge', Challenge, name);
  const problem = checkChallenge(challenge)[0];
  if (problem) throw unsound('Challenge', problem);
  return challenge;
}

function readArguments() {
  const options = {
    challenge: { type: 'string' },
    design: { type: 'string' },
    kit: { type: 'string' },
    list: { type: 'boolean' },
    json: { type: 'boolean' },
    language: { type: 'string' },
  } as const;
  try {
    const { values } = parseArgs({ options, strict: true });
    const { challenge, design, kit, list, json = false, language } = values;
    if (language !== undefined) speak(language);
    if (list && challenge === undefined && design === undefined) return { list, kit } as const;
    if (list || challenge === undefined || design === undefined) throw new Invalid(USAGE);
    return { list: false, challenge, design, kit, json } as const;
  } catch (error) {
    if (error instanceof Invalid) throw error;
    throw new Invalid(`${error instanceof Error ? error.message : ''}\n${USAGE}`);
  }
}

function list(kit: Kit): number {
  for (const one of readyChallenges(kit)) {
    const play = one.playable ? `, ${one.challenge.play}` : '';
    process.stdout.write(
      `${one.topic}. ${one.key} (${textIn(one.title, locale)}${play}): ${words.library.standing(one)}\n`,
    );
  }
  return EXIT.met;
}

function run(): number {
  const given = readArguments();
  const kit = readKit(given.kit);
  if (given.list) return list(kit);
  const challenge = readChallenge(given.challenge, kit);
  const design = readDocument('Design', Design, given.design);
  const { verdict, refusal } = judge(challenge, design, 'entry');
  if (refusal)
    throw wrongValue('Design', refusal.path, `(${refusal.code}): ${words.judging.refusal(refusal)}`);
  const text = given.json
    ? JSON.stringify(writeDocument(Verdict, verdict), null, 2)
    : reportLines(challenge, verdict, locale).join('\n');
  process.stdout.write(`${text}\n`);
  return verdict.met ? EXIT.met : EXIT.notMet;
}

/** Whoever reads the output may stop early, as `head` does: then nobody is left to write to. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});
try {
  process.exitCode = run();
} catch (error) {
  if (!(error instanceof Invalid)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = EXIT.invalid;
}
