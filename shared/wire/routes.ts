/** HTTP routes and the one page that programs name. */
export const ROUTES = {
  /** POST { word } → 204 and a seat cookie, or a refusal. */
  join: '/api/join',
  /** GET ?word= → the same for a scanned code, then a redirect to the tablet page. */
  joinByLink: '/j',
  /** POST { room, team } by the room's desk → SeatCode: another tablet may take the team's seat. */
  seatCode: '/api/seats/code',
  /** POST by a desk: this browser carries no desk and no seat any more. */
  forget: '/api/forget',
  /** GET → DeskAccess: what this browser may do as a desk. */
  access: '/api/access',
  /** GET by owner or desk: LinkInList[]. POST LinkAsked → MadeLink. */
  links: '/api/links',
  /** POST { id }: ends a link at once; and gives it back within UNDO_MS. */
  revokeLink: '/api/links/revoke',
  giveBackLink: '/api/links/give-back',
  /**
   * POST { chargerWatched, continues? } by owner or desk → { room, word }. `continues` is a room that it
   * manages: the class comes back.
   */
  openRoom: '/api/rooms',
  /** GET by a desk: RoomInList[] of the rooms that it has, newest first. */
  rooms: '/api/rooms',
  /** POST { room } by its desk: erases it for good after UNDO_MS; and takes that back before. */
  eraseRoom: '/api/rooms/erase',
  keepRoom: '/api/rooms/keep',
  /** GET by a desk: ErasedRoom[] of the last weeks, the newest first. */
  erasedRooms: '/api/rooms/erased',
  /** GET ?room= by a desk: Shelved[] of its own challenges, or of those of the room's desk. */
  challenges: '/api/challenges',
  /** POST { id, body } by owner or desk: keeps a challenge, also one that is not finished. */
  saveChallenge: '/api/challenges/save',
  /** POST { id }: takes one away at once; and gives it back within UNDO_MS. */
  eraseChallenge: '/api/challenges/erase',
  giveBackChallenge: '/api/challenges/give-back',
  /** The same for kits. */
  kits: '/api/kits',
  saveKit: '/api/kits/save',
  eraseKit: '/api/kits/erase',
  giveBackKit: '/api/kits/give-back',
  /** GET → JoinAddresses; POST { address } by owner or desk → the same, and the QR code carries that one. */
  addresses: '/api/addresses',
  /** GET by a desk → Arrivals. */
  arrivals: '/api/arrivals',
  /** The page that tells whether a device gets through, and how fast. */
  checkPage: '/check',
  /** POST CheckReport by anybody: what that page has measured. */
  check: '/api/check',
  /** GET: as many bytes as a tablet's page has, for measuring. */
  checkLoad: '/api/check/load',
  /** GET ?room=ID or WORD, or without as a board: the QR code that leads into the room, as SVG. A wrong word counts as a guess. */
  qr: '/api/qr.svg',
  /** GET ?room=WORD by a desk: the results as a download. */
  resultsCsv: '/api/results.csv',
  /** GET ?room=WORD&offset= by a desk: what was shown, by class and team, as a download. */
  evidenceCsv: '/api/evidence.csv',
  /** GET ?room=WORD by a desk: the whole room as a download. */
  roomFile: '/api/room.json',
  /** POST a room file by the owner → { room, word }. */
  restoreRoom: '/api/rooms/restore',
  /** GET by anybody: `ok` while the process lives. */
  health: '/health',
  /** GET by anybody: `ready`, or 503 with why this server must not get new visitors. */
  ready: '/ready',
  /** GET by the owner, a collector with its key, or from this machine: figures in the OpenMetrics text format. */
  metrics: '/metrics',
} as const;
