import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import { designIn } from '../../shared/library/variants.ts';
import { conditionsFor } from '../../shared/room/drawn-in.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { currentRound } from '../parts/figures.ts';
import { type Loaded, useDocument } from '../parts/use-document.ts';
import { onTeamsSheet } from '../parts/variants.ts';

/** Each made once, so that the judge and the drawing know by the object that nothing has changed. */
const made = new WeakMap<Challenge, Challenge>();

/**
 * The same challenge with its lines drawn, so that only marks are left to put in. What is handed in is a
 * drawing like any other's, and the judge knows no difference.
 */
function withLines(challenge: Challenge, { drawing }: Design): Challenge {
  const known = made.get(challenge);
  if (known) return known;
  const begin: Design = { version: 1, drawing: { lines: drawing.lines, marks: [] } };
  const gentler: Challenge = { ...challenge, play: 'fill-in', begin };
  made.set(challenge, gentler);
  return gentler;
}

/** The current challenge as a team gets it: on its own sheet, and in the gentler form where the desk says so. */
export function useTeamsChallenge(room: RoomState, team: Team): Loaded<Challenge> {
  const round = room.rounds[currentRound(room)];
  const loaded = useDocument('challenge', round?.challenge ?? null);
  const gentler = room.coaching.gentler.includes(team.id) ? (round?.gentler ?? null) : null;
  const lines = useDocument('design', gentler);
  if (loaded.kind !== 'here') return loaded;
  const usual = loaded.value;
  const own = onTeamsSheet(room, team, usual);
  if (lines.kind === 'loading') return { kind: 'loading' };
  if (lines.kind !== 'here') return { kind: 'here', value: own };
  const variant = own.sheet === usual.sheet ? null : conditionsFor(room, team).variant;
  const turned = variant && designIn(variant, usual, lines.value);
  return { kind: 'here', value: withLines(own, turned ?? lines.value) };
}
