import { setImmediate as turn } from 'node:timers/promises';
import { AnswersVerdict } from '../../shared/documents/answers.ts';
import { Challenge } from '../../shared/documents/challenge.ts';
import { parseDocument } from '../../shared/documents/values.ts';
import { Verdict } from '../../shared/documents/verdict.ts';
import type { LessonRecord } from '../../shared/evidence/record.ts';
import type { DocumentId, RoomState } from '../../shared/room/state.ts';
import type { StoredDocument } from '../log/event-log.ts';

/** After so many documents the server sees to other things: a long lesson has some thousand. */
const AT_ONCE = 10;

/** A room and what its documents tell, as evidence is worked out from. */
export async function lessonRecord(
  room: RoomState,
  documents: readonly StoredDocument[],
): Promise<LessonRecord> {
  const verdicts = new Map<DocumentId, Verdict>();
  const answers = new Map<DocumentId, AnswersVerdict>();
  const challenges = new Map<DocumentId, Challenge>();
  for (const [i, { id, kind, body }] of documents.entries()) {
    if (i % AT_ONCE === AT_ONCE - 1) await turn();
    if (kind === 'verdict') keep(verdicts, id, Verdict, body);
    if (kind === 'answers-verdict') keep(answers, id, AnswersVerdict, body);
    if (kind === 'challenge') keep(challenges, id, Challenge, body);
  }
  return { room, verdicts, answers, challenges };
}

function keep<T>(
  into: Map<DocumentId, T>,
  id: DocumentId,
  schema: Parameters<typeof parseDocument<T>>[0],
  body: string,
): void {
  const parsed = parseDocument(schema, JSON.parse(body));
  if (parsed.ok) into.set(id, parsed.value);
}
