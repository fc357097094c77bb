import { BOARD_LIMITS, type BoardCommand, type BoardScene, type Hung } from './board.ts';
import { strangerTo } from './decide-teams.ts';
import {
  ALREADY,
  type CommandOf,
  type Decision,
  done,
  NOT_BUILDING,
  notNow,
  type Rule,
  refuse,
} from './decision.ts';
import type { RoomFact } from './events.ts';
import { isBuilding, type RoomState } from './state.ts';

/** What the board shows, and what is counted on it. */

const NOTHING_TO_SHOW = refuse({ code: 'nothing-to-show' });
const NO_CHALLENGE = refuse({ code: 'no-challenge' });

/** Whether a scene shows drawings: not while teams draw. */
const DRAWINGS: readonly BoardScene[] = ['stage', 'gallery', 'fleet', 'forecast'];

/** Why a scene can't be shown now; undefined where it can. */
function hindrance(state: RoomState, scene: BoardScene): Decision | undefined {
  const { gallery, fleet, forecast } = state.board;
  if (DRAWINGS.includes(scene) && isBuilding(state)) return notNow(state);
  switch (scene) {
    case 'brief':
      return state.rounds.length > 0 ? undefined : NO_CHALLENGE;
    case 'building':
      return state.building ? undefined : NOT_BUILDING;
    case 'stage':
      return state.phase === 'show' ? undefined : notNow(state);
    case 'gallery':
      return gallery.length > 0 ? undefined : NOTHING_TO_SHOW;
    case 'fleet':
      return fleet ? undefined : NOTHING_TO_SHOW;
    case 'forecast':
      return forecast ? undefined : NOTHING_TO_SHOW;
    case 'wall':
    case 'closing':
      return undefined;
  }
}

/** In the closing the board knows how the entries did: it says what was achieved. */
export function toldVerdicts(state: RoomState): RoomFact[] {
  const verdicts = state.entries.flatMap(({ id, verdict, counted }) =>
    verdict && !counted ? [{ entry: id, ...verdict }] : [],
  );
  return verdicts.length > 0 ? [{ kind: 'verdicts-told', verdicts }] : [];
}

function showScene(state: RoomState, { scene }: CommandOf<'show-scene'>): Decision {
  if (scene === state.board.scene) return ALREADY;
  const hindered = scene && hindrance(state, scene);
  if (hindered) return hindered;
  return done(...(scene === 'closing' ? toldVerdicts(state) : []), { kind: 'scene-shown', scene });
}

/** The drawing of an entry that may be on the wall, or why it may not. */
function hangable(state: RoomState, id: string): Hung | Decision {
  const entry = state.entries.find((each) => each.id === id);
  if (!entry || entry.design === null) return refuse({ code: 'unknown-entry', entry: id });
  const team = state.teams.find((each) => each.id === entry.team);
  if (!team) return strangerTo(state, entry.team);
  if (team.wall === 'not-at-all') return refuse({ code: 'not-on-the-wall' });
  return { entry: id, design: entry.design };
}

const isHung = (found: Hung | Decision): found is Hung => 'design' in found;

function hang(state: RoomState, { entries }: CommandOf<'hang'>): Decision {
  if (isBuilding(state)) return notNow(state);
  if (entries.length > BOARD_LIMITS.gallery)
    return refuse({ code: 'too-many-on-stage', most: BOARD_LIMITS.gallery });
  const found = entries.map((id) => hangable(state, id));
  const refusal = found.find((each) => !isHung(each));
  if (refusal && !isHung(refusal)) return refusal;
  const drawings = found.filter(isHung);
  const { gallery, scene } = state.board;
  const same = gallery.map(({ entry }) => entry).join() === entries.join();
  return same && scene === 'gallery' ? ALREADY : done({ kind: 'hung', drawings });
}

/** The same once more starts the same robots once more. */
function showFleet(state: RoomState, { entry, weather }: CommandOf<'show-fleet'>): Decision {
  if (isBuilding(state)) return notNow(state);
  const drawing = hangable(state, entry);
  return isHung(drawing) ? done({ kind: 'fleet-shown', drawing, weather }) : drawing;
}

function foretell(state: RoomState, { entry }: CommandOf<'foretell'>): Decision {
  if (isBuilding(state)) return notNow(state);
  if (state.rounds.length === 0) return NO_CHALLENGE;
  if (entry === null) return done({ kind: 'foretold', drawing: null });
  const drawing = hangable(state, entry);
  return isHung(drawing) ? done({ kind: 'foretold', drawing }) : drawing;
}

/** By number, so that a key pressed twice drives over one mark. */
function driveOn(state: RoomState, { passed }: CommandOf<'drive-on'>): Decision {
  const { forecast } = state.board;
  if (!forecast) return NOTHING_TO_SHOW;
  return forecast.passed === passed ? ALREADY : done({ kind: 'driven-on', passed });
}

function countHands(state: RoomState, { stop, hands }: CommandOf<'count-hands'>): Decision {
  const { forecast } = state.board;
  if (!forecast) return NOTHING_TO_SHOW;
  const same = forecast.hands[stop]?.join() === hands.join();
  return same ? ALREADY : done({ kind: 'hands-counted', stop, hands });
}

function countBack(state: RoomState, { what, counted }: CommandOf<'count-back'>): Decision {
  const before = state.board[what];
  const same = before?.there === counted?.there && before?.of === counted?.of;
  return same ? ALREADY : done({ kind: 'counted-back', what, counted });
}

export const BOARD_RULES: { readonly [K in BoardCommand['kind']]: Rule<K> } = {
  'show-scene': { by: 'desk', decide: showScene },
  'set-board': {
    by: 'desk',
    decide: (state, { setting, on }) =>
      state.board[setting] === on ? ALREADY : done({ kind: 'board-set', setting, on }),
  },
  hang: { by: 'desk', decide: hang },
  'show-fleet': { by: 'desk', decide: showFleet },
  foretell: { by: 'desk', decide: foretell },
  'drive-on': { by: 'desk', decide: driveOn },
  'count-hands': { by: 'desk', decide: countHands },
  'count-back': { by: 'desk', decide: countBack },
};
