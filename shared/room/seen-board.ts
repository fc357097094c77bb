import type { BoardFact, BoardState, Hung } from './board.ts';
import type { RoomState } from './state.ts';

/** What the board is told of its own part of a room: what hangs there, each with its sheet. */

function onItsSheet<H extends Hung>(hung: H, { entries }: RoomState): H {
  return { ...hung, variant: entries.find(({ id }) => id === hung.entry)?.variant ?? null };
}

export function boardFactTo(fact: BoardFact, state: RoomState): BoardFact {
  switch (fact.kind) {
    case 'hung':
      return { ...fact, drawings: fact.drawings.map((hung) => onItsSheet(hung, state)) };
    case 'fleet-shown':
      return { ...fact, drawing: onItsSheet(fact.drawing, state) };
    case 'foretold':
      return { ...fact, drawing: fact.drawing && onItsSheet(fact.drawing, state) };
    default:
      return fact;
  }
}

/** The same of its state. */
export function boardOf(state: RoomState): BoardState {
  const { board } = state;
  const { gallery, fleet, forecast } = board;
  return {
    ...board,
    gallery: gallery.map((hung) => onItsSheet(hung, state)),
    fleet: fleet && onItsSheet(fleet, state),
    forecast: forecast && { ...forecast, hung: forecast.hung && onItsSheet(forecast.hung, state) },
  };
}
