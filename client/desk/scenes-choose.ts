import type { Challenge } from '../../shared/documents/challenge.ts';
import { weatherOf } from '../../shared/library/conditions.ts';
import { BOARD_LIMITS, type BoardScene } from '../../shared/room/board.ts';
import { type Entry, isBuilding, type RoomState } from '../../shared/room/state.ts';
import type { ClientAsk } from '../../shared/wire/protocol.ts';
import type { Hindrance } from '../../shared/wording/en/scenes.ts';
import { bestEntry, currentRound, entriesOf } from '../parts/figures.ts';
import { givesMarks } from '../parts/use-forecast.ts';

/** Drawings of the current round that may be on the board, in the order of their berths; oldest first. */
export function drawingsFor(room: RoomState, challenge: Challenge | null): Entry[] {
  // Where all is given and predicted there are answers, and nothing was drawn.
  if (challenge === null || challenge.play === 'predict') return [];
  return room.teams
    .filter(({ wall }) => wall !== 'not-at-all')
    .flatMap(({ id }) => entriesOf(room, id))
    .filter(({ design }) => design !== null);
}

/** The best of each team that plays, or its last one where none is judged: as they hang in the gallery. */
export function galleryOf(room: RoomState, drawings: readonly Entry[]): Entry[] {
  const teams = [...new Set(drawings.map(({ team }) => team))];
  return teams.flatMap((team) => {
    const own = drawings.filter((entry) => entry.team === team);
    const best = bestEntry(room, team);
    return own.find(({ id }) => id === best?.id) ?? own.at(-1) ?? [];
  });
}

/** Pages of the gallery, each as many ids as the board has room for. */
export function pagesOf(entries: readonly Entry[]): string[][] {
  const ids = entries.map(({ id }) => id);
  const count = Math.ceil(ids.length / BOARD_LIMITS.gallery);
  return Array.from({ length: count }, (_, page) =>
    ids.slice(page * BOARD_LIMITS.gallery, (page + 1) * BOARD_LIMITS.gallery),
  );
}

/** What a scene that shows one drawing begins with: what is looked at already, or else the newest. */
export function likelyDrawing(room: RoomState, drawings: readonly Entry[]): Entry | undefined {
  const { fleet, forecast } = room.board;
  const looked = [room.stage[0], fleet?.entry, forecast?.hung?.entry];
  const found = looked.flatMap((id) => drawings.filter((entry) => entry.id === id));
  return found[0] ?? [...drawings].sort((a, b) => a.at - b.at).at(-1);
}

/** Why a scene can't be shown now, or the command that shows it. */
export type Choice =
  | { readonly kind: 'hindered'; readonly why: Hindrance }
  | { readonly kind: 'ask'; readonly ask: ClientAsk };

const hindered = (why: Hindrance): Choice => ({ kind: 'hindered', why });
const asks = (ask: ClientAsk): Choice => ({ kind: 'ask', ask });

/** What choosing a scene does; null goes back to that of the lesson. */
export function choiceOf(room: RoomState, challenge: Challenge | null, scene: BoardScene | null): Choice {
  const show = asks({ kind: 'show-scene', scene });
  switch (scene) {
    case null:
    case 'wall':
    case 'closing':
      return show;
    case 'brief':
      return room.rounds.length > 0 ? show : hindered('no-challenge');
    case 'building':
      return room.building ? show : hindered('step');
    case 'stage':
      return room.phase === 'show' ? show : hindered('step');
    default:
      return isBuilding(room) ? hindered('building') : drawnChoice(room, challenge, scene);
  }
}

function drawnChoice(
  room: RoomState,
  challenge: Challenge | null,
  scene: 'gallery' | 'fleet' | 'forecast',
): Choice {
  if (currentRound(room) < 0 || !challenge) return hindered('no-challenge');
  const drawings = drawingsFor(room, challenge);
  const likely = likelyDrawing(room, drawings);
  if (scene === 'forecast') {
    if (givesMarks(challenge)) return asks({ kind: 'foretell', entry: null });
    return likely ? asks({ kind: 'foretell', entry: likely.id }) : hindered('no-marks');
  }
  const [first] = pagesOf(galleryOf(room, drawings));
  if (!first || !likely) return hindered('no-drawings');
  if (scene === 'gallery') return asks({ kind: 'hang', entries: first });
  // The board says in which weather, and a team's own is for itself alone.
  const weather = room.board.fleet?.weather ?? room.conditions.weather ?? weatherOf(challenge);
  return asks({ kind: 'show-fleet', entry: likely.id, weather });
}
