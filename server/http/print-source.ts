import { Challenge, type DrawnIn } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import type { Kit } from '../../shared/documents/kit.ts';
import { parseDocument, textIn } from '../../shared/documents/values.ts';
import { minutesOf } from '../../shared/evidence/class-picture.ts';
import { evidenceOf } from '../../shared/evidence/evidence.ts';
import type { LessonRecord } from '../../shared/evidence/record.ts';
import { challengeUnder } from '../../shared/library/conditions.ts';
import { designOn } from '../../shared/library/variants.ts';
import { conditionsFor } from '../../shared/room/drawn-in.ts';
import type { Seat } from '../../shared/room/events.ts';
import type { DocumentId, Entry, Team, TeamId } from '../../shared/room/state.ts';
import type { PrintAsk } from '../../shared/wire/print.ts';
import type { PrintedEvidence } from '../print/evidence-pages.ts';
import type { PrintedPicture } from '../print/picture-pages.ts';
import type { PrintedChallenge, PrintedDrawing, PrintedTeam, PrintSource } from '../print/print.ts';
import { storedChallenge, storedDesign } from '../rooms/documents.ts';
import { lessonRecord } from '../rooms/lesson-record.ts';
import type { OpenRoom } from '../rooms/outlet.ts';
import { readyNamed, readyTitle } from '../rooms/ready.ts';
import { dateOf } from './evidence.ts';
import type { HttpParts } from './parts.ts';
import { picturesOf } from './results.ts';

/** Who asks for what in which room. */
export interface Asking {
  readonly open: OpenRoom;
  readonly seat: Seat;
  readonly ask: PrintAsk;
}

/** Where tablets come in, without the beginning that nobody types. */
export const addressOf = ({ addresses }: HttpParts): string =>
  addresses
    .now()
    .join.replace(/^https?:\/\//, '')
    .replace(/\/$/, '');

const isEmpty = ({ drawing: { lines, marks } }: Design): boolean => lines.length + marks.length === 0;

/** Reads what a print needs out of a room. */
export class SourceReader {
  readonly #parts: HttpParts;
  readonly #asking: Asking;
  /** A challenge is large, and a whole class has the same one: each is read once. */
  readonly #challenges = new Map<DocumentId, Promise<Challenge | undefined>>();

  constructor(parts: HttpParts, asking: Asking) {
    this.#parts = parts;
    this.#asking = asking;
  }

  async source(): Promise<PrintSource> {
    const { open, ask, seat } = this.#asking;
    const { state } = open.room;
    const asked = state.teams.find(({ id }) => id === ask.team);
    const challenge = await this.#challenge(asked);
    const teams: PrintedTeam[] = [];
    if (ask.kind === 'class') for (const team of state.teams) teams.push(await this.#team(team));
    return {
      word: state.word,
      teamCount: state.teams.length,
      address: addressOf(this.#parts),
      // What the desk hangs on the wall is for the kit that it has chosen; all else is for what is played.
      kit:
        (seat.role === 'team' || ask.kind === 'class' ? challenge?.challenge.kit : undefined) ??
        (await this.#kit()),
      challenge,
      team: asked && (await this.#team(asked, ask.entry)),
      teams,
      closing: ask.kind === 'closing' ? await this.#parts.rooms.closingCheck(open.room) : undefined,
      evidence: ask.kind === 'evidence' ? await this.#evidence() : undefined,
      picture: ask.kind === 'picture' ? await this.#picture() : undefined,
    };
  }

  async #evidence(): Promise<PrintedEvidence> {
    return { evidence: evidenceOf(await this.#record()), ...this.#lesson() };
  }

  /** A page for each round, in the order in which they were played. */
  async #picture(): Promise<PrintedPicture> {
    const record = await this.#record();
    const { room, challenges } = record;
    const now = this.#parts.now();
    const rounds = picturesOf(record, now).flatMap((picture, i) => {
      const { key, challenge: id } = room.rounds[i]!;
      const challenge = challenges.get(id);
      return picture && challenge ? [{ title: this.#titlePlayed(challenge, key), challenge, picture }] : [];
    });
    return { rounds, whole: minutesOf(room, null, now), ...this.#lesson() };
  }

  async #record(): Promise<LessonRecord> {
    const { room } = this.#asking.open;
    return lessonRecord(room.state, await this.#parts.rooms.documents(room));
  }

  /** Which lesson it was, and whose; the day is said to be by UTC where nobody said by which clock else. */
  #lesson(): Pick<PrintedEvidence, 'word' | 'date' | 'emblemOf'> {
    const { open, ask } = this.#asking;
    const { state } = open.room;
    const date = dateOf(state, ask.offset);
    return {
      word: state.word,
      date: ask.offset === undefined ? `${date} (UTC)` : date,
      emblemOf: (team: TeamId) => state.teams.find(({ id }) => id === team)?.emblem ?? '',
    };
  }

  /** The one that is named, else the one that is being played, as a team has it. */
  async #challenge(team?: Team): Promise<PrintedChallenge | undefined> {
    const { ask } = this.#asking;
    if (ask.challenge === undefined) return this.#playedBy(team);
    const named =
      readyNamed(ask.challenge, ask.language, await this.#kit()) ?? (await this.#own(ask.challenge));
    return named && { ...named, id: storedChallenge(named.challenge).id };
  }

  async #own(key: string) {
    const challenge = await this.#parts.kept.ownChallenge(this.#asking.open.room.state.id, key);
    return challenge && { title: this.#titleOf(challenge, key), challenge };
  }

  #titleOf({ title }: Challenge, key: string): string {
    return title ? textIn(title, this.#asking.ask.language) : key;
  }

  #titlePlayed(challenge: Challenge, key: string): string {
    return readyTitle(key, this.#asking.ask.language) ?? this.#titleOf(challenge, key);
  }

  #kit(): Promise<Kit> {
    return this.#parts.rooms.kitOf(this.#asking.open.room);
  }

  async #playedBy(team: Team | undefined): Promise<PrintedChallenge | undefined> {
    const { state } = this.#asking.open.room;
    const ofClass = { variant: null, weather: state.conditions.weather };
    return this.#ofRound(state.rounds.length - 1, team ? conditionsFor(state, team) : ofClass);
  }

  async #ofRound(round: number, drawnIn: DrawnIn): Promise<PrintedChallenge | undefined> {
    const played = this.#asking.open.room.state.rounds[round];
    const challenge = played && (await this.#whole(played.challenge));
    if (!played || !challenge) return undefined;
    const title = this.#titlePlayed(challenge, played.key);
    return { title, id: played.challenge, challenge: challengeUnder(drawnIn, challenge) };
  }

  #whole(id: DocumentId): Promise<Challenge | undefined> {
    const reading = this.#challenges.get(id) ?? this.#read(Challenge, id);
    this.#challenges.set(id, reading);
    return reading;
  }

  async #team(team: Team, entry?: string): Promise<PrintedTeam> {
    const challenge = await this.#challenge(team);
    return { emblem: team.emblem, challenge, drawing: await this.#drawing(team, entry) };
  }

  /** The entry that is named; else what is on the tablet now, or the newest entry of the round. */
  async #drawing(team: Team, named: string | undefined): Promise<PrintedDrawing | undefined> {
    const { entries, rounds } = this.#asking.open.room.state;
    const own = entries.filter((entry) => entry.team === team.id);
    if (named !== undefined) return this.#ofEntry(own.find((entry) => entry.id === named));
    const newest = own.filter(({ round }) => round === rounds.length - 1).at(-1);
    return (await this.#draft(team)) ?? this.#ofEntry(newest);
  }

  async #ofEntry(entry: Entry | undefined): Promise<PrintedDrawing | undefined> {
    if (!entry?.design) return undefined;
    const [design, on] = [await this.#read(Design, entry.design), await this.#ofRound(entry.round, entry)];
    return design && on && { drawing: design.drawing, id: entry.design, on, entry: entry.number };
  }

  async #draft(of: Team): Promise<PrintedDrawing | undefined> {
    const { open } = this.#asking;
    const { state } = open.room;
    const draft = open.newest
      .seenBy({ role: 'desk' }, state, () => true)
      .find(
        (value) => value.kind === 'draft' && value.team === of.id && value.round === state.rounds.length - 1,
      );
    const design = draft?.kind === 'draft' ? parseDocument(Design, draft.design) : undefined;
    const on = await this.#playedBy(of);
    if (!design?.ok || !on || isEmpty(design.value)) return undefined;
    const { variant } = conditionsFor(state, of);
    const from = draft?.kind === 'draft' && draft.variant !== undefined ? draft.variant : variant;
    const drawn = designOn(from, variant, on.challenge, design.value);
    return { drawing: drawn.drawing, id: storedDesign(drawn).id, on };
  }

  async #read<T>(schema: Parameters<typeof parseDocument<T>>[0], id: string): Promise<T | undefined> {
    const { open, seat } = this.#asking;
    const found = await this.#parts.rooms.read(open.room, seat, id);
    const parsed = found.ok ? parseDocument(schema, found.body) : undefined;
    return parsed?.ok ? parsed.value : undefined;
  }
}
