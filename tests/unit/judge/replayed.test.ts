import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readyChallenge } from '../../../server/rooms/ready.ts';
import { Challenge } from '../../../shared/documents/challenge.ts';
import { Design } from '../../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { ENGINE_VERSION, replayed, Verdict } from '../../../shared/documents/verdict.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { challengeIn } from '../../../shared/library/variants.ts';
import { stateOf } from '../../../shared/room/apply.ts';
import { checkRoomFile } from '../../../shared/wire/room-file.ts';

/**
 * Lessons as they were kept, driven anew from nothing but what their rooms keep. The hashes of their runs
 * were written when they were played: by engine 1 and by engine 4.
 */
function entriesOf(version: string) {
  const path = new URL(`../../samples/version-${version}/room.json`, import.meta.url);
  const file = checkRoomFile(JSON.parse(readFileSync(path, 'utf8')));
  if (!file.ok) throw new Error(JSON.stringify(file.refusal));
  const { documents, events } = file.value;
  const read = (id: string | null | undefined, form: Parameters<typeof parseDocument>[0]) => {
    const found = documents.find((each) => each.id === id)!;
    const parsed = parseDocument(form, found.body);
    if (!parsed.ok) throw new Error(`${found.kind} ${found.id}`);
    return parsed.value;
  };
  const state = stateOf(events)!;
  return state.entries.flatMap((entry) => {
    const challenge = read(state.rounds[entry.round]!.challenge, Challenge) as Challenge;
    if (challenge.play === 'predict' || !entry.verdict) return [];
    const sheet = entry.variant ? challengeIn(entry.variant, challenge) : challenge;
    const now = judge(sheet, read(entry.design, Design) as Design, 'live').verdict;
    return [{ now, stored: read(entry.verdict.document, Verdict) as Verdict }];
  });
}

/** As a document is kept and read back. */
const kept = (verdict: Verdict): Verdict => {
  const read = parseDocument(Verdict, JSON.parse(JSON.stringify(writeDocument(Verdict, verdict))));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
};

describe('an entry that is judged now and kept', () => {
  const ready = readyChallenge('first-line')!;
  const stored = kept(judge(ready, ready.model!, 'entry').verdict);
  const now = judge(ready, ready.model!, 'live').verdict;
  const otherRun = stored.runs.map((run) => ({ ...run, traceHash: `other ${run.traceHash}` }));

  it('is driven bit for bit as it was kept', () => {
    expect(stored.runs.length).toBeGreaterThan(0);
    expect(replayed(now, stored)).toBe('same');
  });

  it('is said to be another run where its hash is another: by this engine, or by another one', () => {
    expect(replayed(now, { ...stored, runs: otherRun })).toBe('otherwise');
    expect(replayed(now, { ...stored, runs: otherRun, engine: ENGINE_VERSION - 1 })).toBe('other-engine');
  });
});

describe('an entry that a room has kept', () => {
  it.each([
    ['1', [1, 1, 1]],
    ['2', [4, 4, 4, 4, 4, 4]],
    ['2-later', [4, 4]],
  ])(
    'in version %s is driven bit for bit as it was then, or is said to be by another engine',
    (version, engines) => {
      const entries = entriesOf(version);
      expect(entries.map(({ stored }) => stored.engine)).toEqual(engines);
      for (const { now, stored } of entries) {
        const alike = now.runs.map(({ traceHash }) => traceHash).join();
        const before = stored.runs.map(({ traceHash }) => traceHash).join();
        if (stored.engine === ENGINE_VERSION) expect(alike).toBe(before);
        expect(replayed(now, stored)).toBe(alike === before ? 'same' : 'other-engine');
      }
    },
  );
});
