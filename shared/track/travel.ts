import type { Way } from '../documents/kit.ts';
import { type Action, actionOf, type Kit, PACES } from '../documents/kit.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import { type Exit, exitFor, exitsOf } from './arms.ts';
import { type EdgeMark, type Track, twin } from './track.ts';

/** A robot about to drive a directed edge from the way `from` on. */
export interface Departure {
  readonly edge: number;
  readonly from: Mm;
}

/** Where robots can come, and how fast, when every mark is read as it stands. */
export interface Travel {
  /** Beside `track.edges`: whether the edge can be driven in its direction, at least in part. */
  readonly driven: readonly boolean[];
  /** Index into PACES of the fastest pace possible at the end of an edge; −1 where none comes. */
  readonly paceAtEnd: readonly number[];
  /** Index into PACES of the fastest pace at which the mark can be met, or undefined where it isn't. */
  readonly paceAt: (edge: number, mark: EdgeMark) => number | undefined;
  /** Choices that come to a junction without such an arm, each mark and way once. */
  readonly missing: readonly MissingArm[];
}

/** A choice for an arm that is not there: it is used up and counts as none. */
export interface MissingArm {
  /** The mark that chose, and the edge along which it was met. */
  readonly mark: EdgeMark;
  readonly edge: number;
  readonly way: Way;
  /** The ways that there are instead, from the left. */
  readonly exits: readonly Exit[];
}

interface Choice {
  readonly way: Way;
  readonly mark: EdgeMark;
  readonly edge: number;
}

interface State {
  readonly edge: number;
  readonly from: Mm;
  readonly pace: number;
  readonly choice: Choice | undefined;
}

interface Explored {
  readonly driven: boolean[];
  readonly paceAtEnd: number[];
  readonly met: Map<string, number>;
  readonly missing: Map<string, MissingArm>;
}

const keyOf = (edge: number, mark: EdgeMark): string => `${edge} ${mark.mark.id}`;
const FASTEST = PACES.length - 1;

/**
 * Explores all states (edge, pace, waiting choice) from the departures. A faster pace counts from its
 * mark on, a slower one only after the room that its action needs; turning back and parking happen at
 * their mark. So a pace is never underestimated where marks follow one another.
 */
export function travelFrom(track: Track, kit: Kit, departures: readonly Departure[]): Travel {
  const explored: Explored = {
    driven: track.edges.map(() => false),
    paceAtEnd: track.edges.map(() => -1),
    met: new Map(),
    missing: new Map(),
  };
  const pace = PACES.indexOf(kit.robot.startPace);
  const open: State[] = departures.map(({ edge, from }) => ({ edge, from, pace, choice: undefined }));
  const seen = new Set<string>();
  for (let state = open.pop(); state; state = open.pop()) {
    const key = stateKey(state);
    if (seen.has(key)) continue;
    seen.add(key);
    open.push(...driveEdge(track, kit, state, explored));
  }
  const { driven, paceAtEnd, met, missing } = explored;
  return {
    driven,
    paceAtEnd,
    paceAt: (edge, mark) => met.get(keyOf(edge, mark)),
    missing: [...missing.values()],
  };
}

const stateKey = ({ edge, from, pace, choice }: State): string =>
  `${edge} ${from} ${pace} ${choice ? `${choice.way} ${choice.mark.mark.id}` : ''}`;

/** Meets the marks of one edge in turn; the states in which the robot leaves it. */
function driveEdge(track: Track, kit: Kit, state: State, explored: Explored): State[] {
  const edge = track.edges[state.edge]!;
  explored.driven[edge.index] = true;
  const branches: State[] = [];
  let { pace, choice } = state;
  let late = { pace, until: 0 };
  for (const mark of edge.marks) {
    if (mark.to <= state.from + TOLERANCE.step) continue;
    const metAt = mark.from < late.until ? Math.max(pace, late.pace) : pace;
    const key = keyOf(edge.index, mark);
    explored.met.set(key, Math.max(metAt, explored.met.get(key) ?? -1));
    const action = actionOf(kit, mark.word);
    if (action?.kind === 'park') return branches;
    if (action?.kind === 'turn-back') {
      branches.push({ edge: twin(edge.index), from: edge.length - mark.to, pace, choice });
      return branches;
    }
    if (action?.kind === 'choose') choice = { way: action.way, mark, edge: edge.index };
    const next = paceAfter(action, pace);
    if (next < pace) late = { pace: metAt, until: mark.to + kit.rules.actionReady[PACES[metAt]!] };
    if (action?.kind === 'pace-for') branches.push({ edge: edge.index, from: mark.to, pace, choice });
    pace = next;
  }
  explored.paceAtEnd[edge.index] = Math.max(pace, explored.paceAtEnd[edge.index]!);
  return [...branches, ...onwards(track, kit, { ...state, pace, choice }, explored)];
}

function paceAfter(action: Action | undefined, pace: number): number {
  if (action?.kind === 'pace-by') return Math.min(Math.max(pace + action.steps, 0), FASTEST);
  if (action?.kind === 'pace-to' || action?.kind === 'pace-for') return PACES.indexOf(action.pace);
  return pace;
}

function onwards(track: Track, kit: Kit, { edge, pace, choice }: State, explored: Explored): State[] {
  const node = track.nodes[track.edges[edge]!.to]!;
  const exits = exitsOf(track, edge);
  const to = (index: number, waiting: Choice | undefined): State => ({
    edge: index,
    from: 0,
    pace,
    choice: waiting,
  });
  if (exits.length === 0) return kit.robot.looseEnd === 'turn-back' ? [to(twin(edge), choice)] : [];
  if (node.kind !== 'junction') return exits.map((exit) => to(exit.edge, choice));
  const chosen = choice && exitFor(exits, choice.way);
  if (choice && !chosen) explored.missing.set(`${choice.mark.mark.id} ${choice.way}`, { ...choice, exits });
  const taken =
    chosen ?? (kit.robot.unmarkedJunction === 'straight' ? exitFor(exits, 'straight') : undefined);
  return taken ? [to(taken.edge, undefined)] : exits.map((exit) => to(exit.edge, undefined));
}

/** Directed edges that a robot can come to whatever its choices; it turns where a mark or an end says so. */
export function reachableFrom(track: Track, kit: Kit, departures: readonly Departure[]): readonly boolean[] {
  const reached = track.edges.map(() => false);
  const open = departures.map(({ edge }) => edge);
  for (let edge = open.pop(); edge !== undefined; edge = open.pop()) {
    if (reached[edge]) continue;
    reached[edge] = true;
    const { to, marks } = track.edges[edge]!;
    for (const arm of track.nodes[to]!.arms) if (arm.edge !== twin(edge)) open.push(arm.edge);
    const turns = marks.some((mark) => actionOf(kit, mark.word)?.kind === 'turn-back');
    const turnsAtEnd = track.nodes[to]!.kind === 'end' && kit.robot.looseEnd === 'turn-back';
    if (turns || turnsAtEnd) open.push(twin(edge));
  }
  return reached;
}
