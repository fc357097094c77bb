import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { Challenge } from '../../../../shared/documents/challenge.ts';
import { Design, EMPTY_DESIGN } from '../../../../shared/documents/design.ts';
import { Kit } from '../../../../shared/documents/kit.ts';
import { parseDocument, writeDocument } from '../../../../shared/documents/values.ts';
import { Verdict } from '../../../../shared/documents/verdict.ts';
import { DEMO_KIT } from '../../../../shared/kit/demo-kit.ts';
import { SECOND_KIT } from '../../../../shared/kit/second-kit.ts';
import { readyChallenges } from '../../../../shared/library/ready.ts';
import { KIT_FILE, KitFile } from '../../../../shared/wire/kits.ts';

const ROOT = fileURLToPath(new URL('../../../../', import.meta.url));
const example = (name: string) => join(ROOT, 'shared/library/examples', `${name}.json`);
const CHALLENGE = example('one-fast-stretch');
const MET = example('one-fast-stretch-met');
const UNMET = example('one-fast-stretch-unmet');

const folder = mkdtempSync(join(tmpdir(), 'judge-command-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Writes a changed copy of an example. */
function changed(file: string, change: (json: Json) => void): string {
  const json = JSON.parse(readFileSync(file, 'utf8')) as Json;
  change(json);
  const path = join(folder, `${Math.abs(JSON.stringify(json).length)}.json`);
  writeFileSync(path, JSON.stringify(json));
  return path;
}
interface Json {
  drawing: { lines: { pieces: { bulge: number }[] }[]; marks: { line: string }[] };
  goals: { formula: unknown }[];
}

function command(...args: string[]) {
  const run = spawnSync(process.execPath, ['--import', 'tsx', 'server/commands/judge.ts', ...args], {
    cwd: ROOT,
    encoding: 'utf8',
  });
  return { code: run.status, out: run.stdout, err: run.stderr };
}

describe('npm run judge', () => {
  test('a met design: words and exit code 0', () => {
    const { code, out } = command('--challenge', CHALLENGE, '--design', MET);
    expect(code).toBe(0);
    expect(out).toContain('Met: 100 of 100 points');
    expect(out).toMatch(/Drive exactly one fast stretch of 15 cm or more: [\d.]+ cm to spare/);
    expect(out).toMatch(/reads C A \(mark second\): faster, acts at \d+, 160 after/);
  });

  test('an unmet design by the key of a ready challenge: exit code 1, the corner and its angle', () => {
    const { code, out } = command('--challenge', 'one-fast-stretch', '--design', UNMET);
    expect(code).toBe(1);
    // Goals have 75 of 100 beside thrift; the finish is two fifths of them.
    expect(out).toContain('Not met: 30 of 100 points');
    expect(out).toContain('15 cm missing');
    expect(out).toContain('Sharp corner (42°) at 222, 160 mm');
  });

  test('--language es speaks Spanish; a language that is not spoken ends with 2', () => {
    const { code, out } = command('--challenge', CHALLENGE, '--design', MET, '--language', 'es');
    expect(code).toBe(0);
    expect(out).toContain('Cumplido: 100 de 100 puntos');
    expect(out).toMatch(/Hacer exactamente un tramo rápido de 15 cm o más: [\d,]+ cm de sobra/);
    expect(command('--challenge', CHALLENGE, '--design', MET, '--language', 'xx').code).toBe(2);
  });

  test('--json prints a verdict', () => {
    const { code, out } = command('--challenge', CHALLENGE, '--design', MET, '--json');
    expect(code).toBe(0);
    expect(parseDocument(Verdict, JSON.parse(out))).toMatchObject({
      ok: true,
      value: { level: 'entry', met: true, total: 100 },
    });
  });

  test('what is not valid ends with 2 and the path of the value', () => {
    const bulge = changed(MET, (json) => {
      json.drawing.lines[0]!.pieces[1]!.bulge = 99;
    });
    expect(command('--challenge', CHALLENGE, '--design', bulge)).toMatchObject({
      code: 2,
      err: expect.stringContaining('drawing.lines[0].pieces[1].bulge is too large'),
    });
    const mark = changed(MET, (json) => {
      json.drawing.marks[2]!.line = 'gone';
    });
    expect(command('--challenge', CHALLENGE, '--design', mark)).toMatchObject({
      code: 2,
      err: expect.stringContaining('drawing.marks[2].line'),
    });
    const goal = changed(CHALLENGE, (json) => {
      json.goals[1]!.formula = { kind: 'gates', gates: ['moon'], ordered: true };
    });
    expect(command('--challenge', goal, '--design', MET)).toMatchObject({
      code: 2,
      err: expect.stringContaining('goals[1].formula (unknown-gate)'),
    });
  });

  test('a missing file, a file that is not JSON and missing options end with 2 and a sentence', () => {
    const broken = join(folder, 'broken.json');
    writeFileSync(broken, '{');
    expect(command('--challenge', CHALLENGE, '--design', join(folder, 'none.json'))).toMatchObject({
      code: 2,
      err: expect.stringContaining('there is no file'),
    });
    expect(command('--challenge', CHALLENGE, '--design', broken)).toMatchObject({
      code: 2,
      err: expect.stringContaining('is not JSON'),
    });
    expect(command('--design', MET)).toMatchObject({ code: 2, err: expect.stringContaining('Usage:') });
    expect(command('--speed', '3')).toMatchObject({ code: 2, err: expect.stringContaining('Usage:') });
  });
});

describe('npm run judge with another kit', () => {
  const kit = join(folder, 'kit.json');
  writeFileSync(kit, JSON.stringify(writeDocument(Kit, SECOND_KIT)));

  test('--list says of each ready challenge whether it can be played', () => {
    const { code, out } = command('--list', '--kit', kit);
    expect(code).toBe(0);
    expect(out.trim().split('\n')).toHaveLength(24);
    expect(out).toContain('20. past-the-nest (Past the nest): Can’t be played with this kit');
    expect(command('--list', '--design', MET)).toMatchObject({
      code: 2,
      err: expect.stringContaining('Usage:'),
    });
  });

  test('a kit as the desk saves it is read like a bare one', () => {
    const saved = join(folder, 'saved-kit.json');
    writeFileSync(saved, JSON.stringify(writeDocument(KitFile, { ...KIT_FILE, kit: SECOND_KIT })));
    expect(command('--list', '--kit', saved)).toEqual(command('--list', '--kit', kit));
  });

  test('a kit that nothing can be driven with ends with 2 and the place', () => {
    const bad = join(folder, 'bad-kit.json');
    const write = (over: Partial<Kit>) =>
      writeFileSync(bad, JSON.stringify(writeDocument(Kit, { ...DEMO_KIT, ...over })));
    write({ robot: { ...DEMO_KIT.robot, wheelTrack: 0 } });
    expect(command('--list', '--kit', bad)).toMatchObject({
      code: 2,
      err: expect.stringContaining('robot.wheelTrack (size-zero)'),
    });
    write({ chart: [...DEMO_KIT.chart, { word: 'CA', action: { kind: 'park' } }] });
    expect(command('--list', '--kit', bad, '--language', 'es')).toMatchObject({
      code: 2,
      err: expect.stringContaining('chart[12].word (word-twice): La tabla'),
    });
  });

  test('--list ends quietly when its reader does not wait for all of it', async () => {
    const args = ['--import', 'tsx', 'server/commands/judge.ts', '--list'];
    const run = spawn(process.execPath, args, { cwd: ROOT, stdio: ['ignore', 'pipe', 'pipe'] });
    run.stdout.destroy();
    const [err, [code]] = await Promise.all([text(run.stderr), once(run, 'exit')]);
    expect({ err, code }).toEqual({ err: '', code: 0 });
  });

  test('one that can’t be played ends with 2 and the reason', () => {
    expect(command('--challenge', 'past-the-nest', '--design', MET, '--kit', kit)).toMatchObject({
      code: 2,
      err: expect.stringContaining('its chart has no mark for “tiptoe”'),
    });
  });

  test('a challenge that is answered prints its questions with the answers', () => {
    const empty = join(folder, 'empty.json');
    writeFileSync(empty, JSON.stringify(writeDocument(Design, EMPTY_DESIGN)));
    const { code, out } = command('--challenge', 'two-travellers', '--design', empty);
    expect(code).toBe(1);
    // The mark says faster to the one, slower to the other; a run starts at pace steady.
    expect(out).toMatch(/What does this mark say to the robot from the Boathouse\? Answer: faster\./);
    expect(out).toMatch(/What does this mark say to the robot from the Lighthouse\? Answer: slower\./);
  });
});

describe('the shipped examples', () => {
  const one = readyChallenges(DEMO_KIT).find((r) => r.key === 'one-fast-stretch');
  const json = (file: string): unknown => JSON.parse(readFileSync(file, 'utf8'));

  test('are the ready challenge and its model in their file form', () => {
    if (!one?.playable) throw new Error('the demo chart has every action');
    expect(json(CHALLENGE)).toEqual(writeDocument(Challenge, one.challenge));
    expect(json(MET)).toEqual(writeDocument(Design, one.challenge.model!));
  });

  test('the unmet design is a sound document', () => {
    expect(parseDocument(Design, json(UNMET)).ok).toBe(true);
  });
});
