import { create } from 'zustand';
import { Challenge } from '../../../shared/documents/challenge.ts';
import { type DocumentProblem, parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import type { Shelved } from '../../../shared/wire/desks.ts';
import { LIMITS, ROUTES, type WireRefusal } from '../../../shared/wire/protocol.ts';
import { getJson, type HttpAnswer, postJson } from '../../parts/http.ts';
import { saveFile } from '../../parts/save-file.ts';
import { newOwnId } from './blank.ts';

/** The challenges that this desk has made, as the server keeps them. */

interface OwnState {
  /** null until they have come. */
  readonly list: readonly Challenge[] | null;
  readonly refusal: WireRefusal | null;
}

export const useOwn = create<OwnState>()(() => ({ list: null, refusal: null }));

/** Fetches them anew: this desk's own, or those of the desk whose room it is. */
export async function loadOwn(room: string | null): Promise<void> {
  const path = room === null ? ROUTES.challenges : `${ROUTES.challenges}?room=${encodeURIComponent(room)}`;
  const answer = await getJson<readonly Shelved[]>(path);
  if (!answer.ok) return useOwn.setState({ refusal: answer.refusal });
  const list = answer.value.flatMap(({ id, body }) => {
    const read = parseDocument(Challenge, body);
    return read.ok ? [{ ...read.value, id }] : [];
  });
  useOwn.setState({ list, refusal: null });
}

export const saveOwn = (challenge: Challenge): Promise<HttpAnswer<null>> =>
  postJson(ROUTES.saveChallenge, { id: challenge.id, body: writeDocument(Challenge, challenge) });
export const eraseOwn = (id: string): Promise<HttpAnswer<null>> => postJson(ROUTES.eraseChallenge, { id });
export const giveBackOwn = (id: string): Promise<HttpAnswer<null>> =>
  postJson(ROUTES.giveBackChallenge, { id });

/** Where a challenge is built; back from there leads to the room. */
export const builderPath = (id: string, room: string | null): string =>
  `/desk?build=${encodeURIComponent(id)}${room === null ? '' : `&room=${encodeURIComponent(room)}`}`;

export type ReadFile =
  | { readonly ok: true; readonly challenge: Challenge }
  | { readonly ok: false; readonly problem: DocumentProblem | null; readonly refusal?: WireRefusal };

/** Line breaks and blanks make a file larger than what is sent. */
const LARGEST_FILE = 4 * LIMITS.challengeBytes;

/** A challenge from a file that somebody saved, with an id of its own here; never throws. */
export async function readChallenge(file: File): Promise<ReadFile> {
  if (file.size > LARGEST_FILE)
    return { ok: false, problem: null, refusal: { code: 'too-large', bytes: file.size, most: LARGEST_FILE } };
  let input: unknown;
  try {
    input = JSON.parse(await file.text());
  } catch {
    return { ok: false, problem: null };
  }
  const read = parseDocument(Challenge, input);
  if (!read.ok) return { ok: false, problem: read.problems[0] ?? null };
  return { ok: true, challenge: { ...read.value, id: newOwnId() } };
}

/** Saves a challenge as a file on this machine. */
export function saveAsFile(challenge: Challenge): void {
  const text = `${JSON.stringify(writeDocument(Challenge, challenge), null, 1)}\n`;
  const file = new Blob([text], { type: 'application/json' });
  saveFile(file, `harbour-lines-challenge-${challenge.id}.json`);
}
