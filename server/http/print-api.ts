import { type Request, type Response, Router } from 'express';
import { Challenge, type DrawnIn } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import type { Kit } from '../../shared/documents/kit.ts';
import { type Locale, parseDocument, textIn } from '../../shared/documents/values.ts';
import { evidenceOf } from '../../shared/evidence/evidence.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { challengeUnder } from '../../shared/library/conditions.ts';
import { conditionsFor } from '../../shared/room/drawn-in.ts';
import type { Seat } from '../../shared/room/events.ts';
import type { DocumentId, Entry, Team } from '../../shared/room/state.ts';
import {
  PAGES_HEAD,
  PrintAsk,
  type PrintProgress,
  ROOMLESS_KINDS,
  TEAM_KINDS,
} from '../../shared/wire/print.ts';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import { type Checked, checkForm } from '../../shared/wire/schemas.ts';
import type { PrintedEvidence } from '../print/evidence-pages.ts';
import type { Page } from '../print/page.ts';
import { pdfOf } from '../print/pdf.ts';
import {
  type Printed,
  type PrintedChallenge,
  type PrintedDrawing,
  type PrintedTeam,
  type PrintSource,
  printed,
} from '../print/print.ts';
import { svgOf } from '../print/svg.ts';
import { printTools } from '../print/tools.ts';
import { storedChallenge, storedDesign } from '../rooms/documents.ts';
import { lessonRecord } from '../rooms/lesson-record.ts';
import type { OpenRoom } from '../rooms/outlet.ts';
import { readyNamed, readyTitle } from '../rooms/ready.ts';
import { deskNamed } from '../seats/access.ts';
import { ownRoom } from './desks.ts';
import { dateOf } from './evidence.ts';
import { carried, type HttpParts } from './parts.ts';
import { refuse } from './refuse.ts';

const refused = (refusal: WireRefusal) => ({ ok: false, refusal }) as const;

interface Asking {
  readonly open: OpenRoom;
  readonly seat: Seat;
  readonly ask: PrintAsk;
}

/** Who asks, for what, in which room. The desk may print anything of its room, a team its own. */
async function askingOf(parts: HttpParts, request: Request): Promise<Checked<Asking>> {
  const { kind, format } = request.params;
  const form = checkForm(PrintAsk, { ...request.query, kind, format });
  if (!form.ok) return form;
  const ask = form.value;
  const access = await parts.accesses.of(carried(request));
  const own = await ownRoom(parts, request, access);
  if (own) await parts.rooms.refresh(own);
  if (own) return { ok: true, value: { open: own, seat: { role: 'desk' }, ask } };
  if (access.kind === 'owner') return refused({ code: 'unknown-room' });
  const place = await parts.rooms.seat(carried(request).teamToken);
  const open = place && (await parts.rooms.byId(place.room));
  if (!place || !open) return refused({ code: 'no-seat' });
  const { team } = place;
  await parts.rooms.refresh(open);
  if (!open.room.state.teams.some(({ id, seatFree }) => id === team && !seatFree))
    return refused({ code: 'no-seat' });
  if (!isForTeam(ask, team)) return refused({ code: 'not-for-this-seat' });
  return { ok: true, value: { open, seat: { role: 'team', team }, ask: { ...ask, team } } };
}

const isForTeam = ({ kind, team, challenge, key }: PrintAsk, own: string): boolean =>
  TEAM_KINDS.includes(kind) && (team ?? own) === own && challenge === undefined && key === 'no';

/** What is asked for, with what it is made of; rates are counted on the way. */
interface ToPrint {
  readonly ask: PrintAsk;
  readonly source: PrintSource;
}

/** Where tablets come in, without the beginning that nobody types. */
const addressOf = ({ addresses }: HttpParts): string =>
  addresses
    .now()
    .join.replace(/^https?:\/\//, '')
    .replace(/\/$/, '');

/** What a desk prints before it has a room; undefined for all else. */
async function aheadOf(parts: HttpParts, request: Request): Promise<Checked<ToPrint> | undefined> {
  const form = checkForm(PrintAsk, { ...request.query, ...request.params });
  if (!form.ok || form.value.room !== undefined || !ROOMLESS_KINDS.includes(form.value.kind))
    return undefined;
  const ask = form.value;
  const access = await parts.accesses.of(carried(request));
  if (access.kind === 'none') return undefined;
  if (!(await parts.rates.allows('print', deskNamed(access)))) return refused({ code: 'too-fast' });
  const named = ask.challenge === undefined ? undefined : readyNamed(ask.challenge, ask.language);
  const challenge = named && { ...named, id: storedChallenge(named.challenge).id };
  const about = { word: null, teamCount: 0, address: addressOf(parts), kit: DEMO_KIT, teams: [] };
  return { ok: true, value: { ask, source: { ...about, challenge } } };
}

async function wantedIn(parts: HttpParts, request: Request): Promise<Checked<ToPrint>> {
  const asking = await askingOf(parts, request);
  if (!asking.ok) return asking;
  const { ask, seat, open } = asking.value;
  const who = seat.role === 'team' ? seat.team : 'desk';
  if (!(await parts.rates.allows('print', `${open.room.state.id} ${who}`)))
    return refused({ code: 'too-fast' });
  return { ok: true, value: { ask, source: await new Reader(parts, asking.value).source() } };
}

/** Reads what a print needs out of a room. */
class Reader {
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
    };
  }

  async #evidence(): Promise<PrintedEvidence> {
    const { room } = this.#asking.open;
    const { state } = room;
    const evidence = evidenceOf(await lessonRecord(state, await this.#parts.rooms.documents(room)));
    const emblemOf = (team: string) => state.teams.find(({ id }) => id === team)?.emblem ?? '';
    return { evidence, word: state.word, date: dateOf(state), emblemOf };
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

  #kit(): Promise<Kit> {
    return this.#parts.rooms.kitOf(this.#asking.open.room);
  }

  async #playedBy(team: Team | undefined): Promise<PrintedChallenge | undefined> {
    const { state } = this.#asking.open.room;
    const ofClass = { variant: null, weather: state.conditions.weather };
    return this.#ofRound(state.rounds.length - 1, team ? conditionsFor(state, team) : ofClass);
  }

  async #ofRound(round: number, drawnIn: DrawnIn): Promise<PrintedChallenge | undefined> {
    const { open, ask } = this.#asking;
    const played = open.room.state.rounds[round];
    const challenge = played && (await this.#whole(played.challenge));
    if (!played || !challenge) return undefined;
    const title = readyTitle(played.key, ask.language) ?? this.#titleOf(challenge, played.key);
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
    if (!design?.ok || !on || design.value.drawing.lines.length === 0) return undefined;
    return { drawing: design.value.drawing, id: storedDesign(design.value).id, on };
  }

  async #read<T>(schema: Parameters<typeof parseDocument<T>>[0], id: string): Promise<T | undefined> {
    const { open, seat } = this.#asking;
    const found = await this.#parts.rooms.read(open.room, seat, id);
    const parsed = found.ok ? parseDocument(schema, found.body) : undefined;
    return parsed?.ok ? parsed.value : undefined;
  }
}

type Sound = Extract<Printed, { ok: true }>;

async function sendSvg(response: Response, { title, parts }: Sound, page: number): Promise<void> {
  const pages: Page[] = [];
  for (const part of parts) {
    pages.push(...part());
    await new Promise((resolve) => setImmediate(resolve));
  }
  const wanted = pages[page - 1];
  if (!wanted) return refuse(response, { code: 'cannot-print', why: 'no-page' });
  response.type('svg').set(PAGES_HEAD, String(pages.length)).send(svgOf(title, wanted));
}

/** Line by line how far it is, then the file: the page shows it and can stop it. */
async function sendWithProgress(
  response: Response,
  print: Sound,
  name: string,
  language: Locale,
): Promise<void> {
  const stop = new AbortController();
  response.on('close', () => stop.abort());
  const tell = (progress: PrintProgress) => response.write(`${JSON.stringify(progress)}\n`);
  response.type('application/octet-stream');
  const of = print.parts.length;
  tell({ done: 0, of });
  const told = (done: number) => void tell({ done, of });
  const bytes = await pdfOf(print.title, print.parts, { language, told, signal: stop.signal });
  tell({ bytes: bytes.length, name });
  response.end(Buffer.from(bytes));
}

/** Downloads of what goes to paper. */
export function printApi(parts: HttpParts): Router {
  const router = Router();
  router.get('/api/print/:kind.:format', async (request, response) => {
    const wanted = (await aheadOf(parts, request)) ?? (await wantedIn(parts, request));
    if (!wanted.ok) return refuse(response, wanted.refusal);
    const { ask, source } = wanted.value;
    const print = printed(ask, source, await printTools(ask.language, ask.units));
    if (!print.ok) return refuse(response, { code: 'cannot-print', why: print.why });
    if (ask.format === 'svg') return await sendSvg(response, print, Number(ask.page ?? 1));
    const name = `${['harbour-lines', ask.kind, source.team?.emblem].filter(Boolean).join('-')}.pdf`;
    try {
      if (ask.progress === 'yes') return await sendWithProgress(response, print, name, ask.language);
      const bytes = await pdfOf(print.title, print.parts, { language: ask.language });
      response.attachment(name).type('pdf').send(Buffer.from(bytes));
    } catch (error) {
      // Nobody waits for it any more.
      if (!response.destroyed) throw error;
    }
  });
  return router;
}
