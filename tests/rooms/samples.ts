/**
 * Lessons as each version kept them. The files in `samples` are never made anew; whatever changes later,
 * these must open. What is expected is what was done in the lesson when it was kept.
 */
export interface Sample {
  /** Its version, and what came later where that has gained many facts since. */
  readonly name: string;
  readonly word: string;
  /** The seat of the first team, as its tablet's browser carries it. */
  readonly firstTeam: string;
  /** A hand-in that the first team has its answer to. */
  readonly handedIn: { readonly id: string; readonly seq: number };
  readonly asPlayed: unknown;
  /** Of each entry: points and whether the drawing may be looked at, as the board has them. */
  readonly atBoard: readonly unknown[];
  /** Kinds of what each entry handed in and of its verdict. */
  readonly documents: readonly string[];
}

const DRAWN = ['design', 'verdict'];
const ANSWERED = ['answers', 'answers-verdict'];
const team = (emblem: string, berth: number) => ({
  emblem,
  berth,
  moves: 0,
  help: null,
  // Nobody had been asked yet: a drawing stands without its emblem until its team agrees.
  wall: null,
  mended: [],
});

export const SAMPLES: readonly Sample[] = [
  {
    // Two teams, three entries, one of them late, a draft, a stage.
    name: '1',
    word: 'hill-96',
    firstTeam: 'harbour_team=-aDLbWp9at-UzXFs4pYFkdgeqRdytqD0',
    handedIn: { id: 'first-hand-in', seq: 7 },
    asPlayed: {
      phase: 'show',
      teams: [team('sailboat', 1), team('bell', 2)],
      rounds: [['first-line', false]],
      help: 'mend',
      tries: [],
      entries: [
        [1, null, false, true, false, 100, true, true],
        [1, null, false, true, false, 0, false, false],
        // In this version late ones counted at once, and they still do.
        [2, null, true, true, false, 0, false, false],
      ],
      onStage: 1,
      standingsShown: true,
    },
    atBoard: [
      [100, true],
      [0, false],
      [0, false],
    ],
    documents: [...DRAWN, ...DRAWN, ...DRAWN],
  },
  {
    /*
     * Three rounds with varied sheets, the second of them predicted; help, tries, a reason, mending, late
     * entries of which the desk takes one, an entry that the judge failed on at first, seats and teams that
     * moved, a desk by its link.
     */
    name: '2',
    word: 'onion-87',
    firstTeam: 'harbour_team=_nfcRkLtF-woIb2DxWHHD9K72A4RS3qU',
    handedIn: { id: 'v2-10-hand-in', seq: 17 },
    asPlayed: {
      phase: 'show',
      teams: [
        { ...team('sailboat', 1), help: 'place' },
        { ...team('bell', 2), wall: 'no-emblem', mended: [0] },
        { ...team('telescope', 3), moves: 1 },
      ],
      rounds: [
        ['ferry-junction', true],
        ['two-travellers', true],
        ['first-line', true],
      ],
      help: 'sentence',
      tries: [
        [0, 'fails', { x: 100, y: 20 }, true, 'got-tired', 'line-lost'],
        [0, 'not-sure', null, false, undefined, undefined],
      ],
      entries: [
        [1, null, false, true, false, 100, true, true],
        [1, 'mirrored', false, true, true, 100, true, true],
        [2, null, true, true, false, 0, false, false],
        [2, 'mirrored', true, false, true, 0, false, false],
        [1, 'turned', true, false, false, 0, false, false],
        [1, null, false, true, false, 0, false, false],
        [2, null, false, true, false, 50, false, false],
        [1, 'mirrored', false, true, false, 0, false, true],
      ],
      onStage: 1,
      standingsShown: true,
    },
    atBoard: [
      [100, true],
      [100, true],
      [0, false],
      [0, false],
      [0, false],
      [0, false],
      [50, false],
      [0, true],
    ],
    documents: [...Array(5).fill(DRAWN), ANSWERED, ANSWERED, DRAWN].flat() as string[],
  },
  {
    /*
     * A lesson that goes on from another one; calibrations, weather, notes, an entry that is given back, a
     * closing check, scenes of the board, hands, trials of robots, a kit.
     */
    name: '2-later',
    word: 'pond-243',
    firstTeam: 'harbour_team=opfjJy-IOLnsdaqtBQ0KwbY77HNGPfSX',
    handedIn: { id: 'v2-later-hand-in', seq: 26 },
    asPlayed: {
      phase: 'show',
      teams: [team('sailboat', 1), team('bell', 2)],
      rounds: [['first-line', false]],
      help: 'sentence',
      tries: [],
      entries: [
        [1, null, false, true, false, 0, false, true],
        [1, null, false, true, false, 0, false, false],
      ],
      onStage: 1,
      standingsShown: true,
    },
    atBoard: [
      [0, true],
      [0, false],
    ],
    documents: [...DRAWN, ...DRAWN],
  },
];
/** Of the desk in version 2 that has its room by a link. */
export const DESK_BY_LINK = 'harbour_desk=X0u50Hh-NvbK7XucHGbiojIoi325t73u';
