import { create } from 'zustand';
import type { EntryId, Phase, TeamId } from '../../shared/room/state.ts';
import type { Step } from '../../shared/wording/en/desk.ts';
import type { Glance } from './insight.ts';
import { keysAreOn, switchKeys } from './keys.ts';

/** A destructive act of this desk that can still be taken back. */
export interface Undoable {
  readonly said: string;
  readonly back: () => void;
}

export type Leaf = 'paper' | 'picture';

/** What the desk itself looks at; nothing of it is the room's business. */
export interface DeskState {
  /** The step being looked at; null follows the class. */
  readonly step: Step | null;
  /** What lies beside the steps and is looked at: what goes to paper, or the class as a whole. */
  readonly leaf: Leaf | null;
  /** The class's phase when the desk last followed it. */
  readonly phase: Phase | null;
  readonly team: TeamId | null;
  /** An entry of that team; null is its newest drawing. */
  readonly entry: EntryId | null;
  /** Key of the challenge marked in the list. */
  readonly marked: string | null;
  /** Building time for the next start; null without a limit. */
  readonly minutes: number | null;
  /** Whether the cards of the grid stand by who may need somebody. */
  readonly byNeed: boolean;
  /** What the cards of the grid last saw of their teams. */
  readonly glances: Readonly<Record<TeamId, Glance>>;
  readonly keysOn: boolean;
  readonly helpOpen: boolean;
  /** The team whose seat is being looked after. */
  readonly seatOf: TeamId | null;
  /** The team to which something is said. */
  readonly noteTo: TeamId | null;
  readonly undoable: Undoable | null;
  /** The class has gone on to a phase: wherever the desk was looking, it goes with it. */
  readonly follow: (phase: Phase) => void;
  readonly lookAt: (step: Step | null) => void;
  readonly openLeaf: (leaf: Leaf) => void;
  readonly pickTeam: (team: TeamId | null, entry?: EntryId | null) => void;
  readonly mark: (key: string) => void;
  readonly setMinutes: (minutes: number | null) => void;
  readonly orderBy: (byNeed: boolean) => void;
  readonly report: (team: TeamId, glance: Glance) => void;
  readonly setKeys: (on: boolean) => void;
  readonly setHelp: (open: boolean) => void;
  readonly openSeat: (team: TeamId | null) => void;
  readonly openNote: (team: TeamId | null) => void;
  readonly offerUndo: (undoable: Undoable | null) => void;
}

/** Whether the lines around the grid would say the same of both. */
const sameGlance = (a: Glance | undefined, b: Glance): boolean =>
  a !== undefined && JSON.stringify([a.need, a.finding]) === JSON.stringify([b.need, b.finding]);

export const useDesk = create<DeskState>()((set) => ({
  step: null,
  leaf: null,
  phase: null,
  team: null,
  entry: null,
  marked: null,
  minutes: 10,
  byNeed: true,
  glances: {},
  keysOn: keysAreOn(),
  helpOpen: false,
  seatOf: null,
  noteTo: null,
  undoable: null,
  follow: (phase) => set((state) => (state.phase === phase ? state : { phase, step: null, leaf: null })),
  lookAt: (step) => set({ step, leaf: null }),
  openLeaf: (leaf) => set({ leaf }),
  pickTeam: (team, entry = null) => set({ team, entry }),
  mark: (marked) => set({ marked }),
  setMinutes: (minutes) => set({ minutes }),
  orderBy: (byNeed) => set({ byNeed }),
  report: (team, glance) =>
    set((state) =>
      sameGlance(state.glances[team], glance) ? state : { glances: { ...state.glances, [team]: glance } },
    ),
  setKeys: (keysOn) => {
    switchKeys(keysOn);
    set({ keysOn });
  },
  setHelp: (helpOpen) => set({ helpOpen }),
  openSeat: (seatOf) => set({ seatOf }),
  openNote: (noteTo) => set({ noteTo }),
  offerUndo: (undoable) => set({ undoable }),
}));
