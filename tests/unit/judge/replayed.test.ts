import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Challenge } from '../../../shared/documents/challenge.ts';
import { Design } from '../../../shared/documents/design.ts';
import { parseDocument } from '../../../shared/documents/values.ts';
import { ENGINE_VERSION, replayed, Verdict } from '../../../shared/documents/verdict.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { challengeIn } from '../../../shared/library/variants.ts';
import { stateOf } from '../../../shared/room/apply.ts';
import { checkRoomFile } from '../../../shared/wire/room-file.ts';

/**
 * Lessons as they were kept, driven anew from nothing but what their rooms keep. The hashes of their runs
 * were written when they were played: by engine 1 and by engine 4.
 */
function entriesOf(version: number) {
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

describe('an entry that a room has kept', () => {
  it('by this engine is driven bit for bit as it was then, on its own sheet', () => {
    const entries = entriesOf(2);
    expect(entries).toHaveLength(6);
    for (const { now, stored } of entries)
      if (stored.engine === ENGINE_VERSION) expect(replayed(now, stored)).toBe('same');
  });

  it('by an earlier engine is driven bit for bit as it was then, or is said to be another run', () => {
    const entries = entriesOf(1);
    expect(entries.map(({ stored }) => stored.engine)).toEqual([1, 1, 1]);
    for (const { now, stored } of entries) {
      const alike = now.runs.map(({ traceHash }) => traceHash).join();
      const before = stored.runs.map(({ traceHash }) => traceHash).join();
      expect(replayed(now, stored)).toBe(alike === before ? 'same' : 'other-engine');
    }
  });
});
