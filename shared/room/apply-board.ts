import type { BoardFact, BoardState } from './board.ts';
import type { RoomEvent } from './events.ts';
import type { RoomState, TeamId } from './state.ts';

/** How the board's part of a room follows from its facts. */

type FactOf<K extends BoardFact['kind']> = Extract<BoardFact, { kind: K }>;
type Fold<K extends BoardFact['kind']> = (state: RoomState, fact: FactOf<K>, event: RoomEvent) => RoomState;

const withBoard = (state: RoomState, change: Partial<BoardState>): RoomState => ({
  ...state,
  board: { ...state.board, ...change },
});

/** The scene of the lesson again. */
export const lessonScene = (state: RoomState): RoomState => withBoard(state, { scene: null });

/** A new challenge: nothing of the one before hangs on the board. */
export const clearedBoard = (state: RoomState): RoomState =>
  withBoard(state, { scene: null, gallery: [], fleet: null, forecast: null });

/** Without the drawings of a team; a scene that has nothing left to show gives way to that of the lesson. */
export function boardWithout(state: RoomState, team: TeamId): RoomState {
  const { board } = state;
  const isOthers = ({ entry }: { readonly entry: string }) =>
    state.entries.find(({ id }) => id === entry)?.team !== team;
  const kept = {
    gallery: board.gallery.filter(isOthers),
    fleet: board.fleet && isOthers(board.fleet) ? board.fleet : null,
    forecast: board.forecast?.hung && !isOthers(board.forecast.hung) ? null : board.forecast,
  };
  const empty =
    (board.scene === 'gallery' && kept.gallery.length === 0) ||
    (board.scene === 'fleet' && kept.fleet === null) ||
    (board.scene === 'forecast' && kept.forecast === null);
  return withBoard(state, { ...kept, scene: empty ? null : board.scene });
}

export const BOARD_FOLDS: { readonly [K in BoardFact['kind']]: Fold<K> } = {
  'scene-shown': (state, { scene }) => withBoard(state, { scene }),
  'board-set': (state, { setting, on }) => withBoard(state, { [setting]: on }),
  hung: (state, { drawings }) => withBoard(state, { scene: 'gallery', gallery: drawings }),
  'fleet-shown': (state, { drawing, weather }, { at }) =>
    withBoard(state, { scene: 'fleet', fleet: { ...drawing, weather, since: at } }),
  foretold: (state, { drawing }, { at }) =>
    withBoard(state, { scene: 'forecast', forecast: { hung: drawing, passed: 0, since: at, hands: [] } }),
  'driven-on': (state, { passed }, { at }) => {
    const { forecast } = state.board;
    return forecast ? withBoard(state, { forecast: { ...forecast, passed, since: at } }) : state;
  },
  'hands-counted': (state, { stop, hands }) => {
    const { forecast } = state.board;
    if (!forecast) return state;
    const stops = Math.max(stop + 1, forecast.hands.length);
    const counted = (i: number) => (i === stop ? hands : (forecast.hands[i] ?? []));
    return withBoard(state, {
      forecast: { ...forecast, hands: Array.from({ length: stops }, (_, i) => counted(i)) },
    });
  },
  'counted-back': (state, { what, counted }) => withBoard(state, { [what]: counted }),
};

export const isBoardFact = (fact: { readonly kind: string }): fact is BoardFact =>
  Object.hasOwn(BOARD_FOLDS, fact.kind);
