import type { Challenge } from '../../shared/documents/challenge.ts';
import { textIn } from '../../shared/documents/values.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { useDocument } from '../parts/use-document.ts';
import { useLocale } from '../parts/use-words.ts';

/** The challenge of the current round, and its sentence; null while there is none or it is on its way. */
export function useCurrentChallenge(room: RoomState): { challenge: Challenge; sentence: string } | null {
  const locale = useLocale();
  const loaded = useDocument('challenge', room.rounds.at(-1)?.challenge ?? null);
  if (loaded.kind !== 'here') return null;
  return { challenge: loaded.value, sentence: textIn(loaded.value.sentence, locale) };
}
