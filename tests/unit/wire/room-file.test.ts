import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RoomEvent } from '../../../shared/room/events.ts';
import { checkRoomFile, ROOM_FILE } from '../../../shared/wire/room-file.ts';
import { lesson, play } from '../room/arbitraries.ts';
import '../../seed.ts';

/** The ids of documents in random lessons; in a file they are hashes. */
const DOCUMENT = /"(?:[cgq]\d|kit-\d|[dv]-t\d-e\d)"/g;
const HASH = `"${'0'.repeat(64)}"`;

describe('checkRoomFile', () => {
  it('takes the events of any lesson: of its documents alone it says that they are missing', () => {
    fc.assert(
      fc.property(lesson, (steps) => {
        const { events } = play(steps);
        const written: RoomEvent[] = JSON.parse(JSON.stringify(events).replaceAll(DOCUMENT, HASH));
        const read = checkRoomFile({ ...ROOM_FILE, events: written, documents: [] });
        if (read.ok)
          expect(read.value.events.map(({ fact }) => fact)).toEqual(written.map(({ fact }) => fact));
        else expect(read.refusal).toMatchObject({ code: 'bad-form', path: 'documents' });
      }),
      { numRuns: 500 },
    );
  });
});
