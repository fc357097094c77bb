import { type Request, type Response, Router } from 'express';
import type { Locale } from '../../shared/documents/values.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import {
  PAGES_HEAD,
  PrintAsk,
  type PrintProgress,
  ROOMLESS_KINDS,
  TEAM_KINDS,
} from '../../shared/wire/print.ts';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import { type Checked, checkForm } from '../../shared/wire/schemas.ts';
import type { Page } from '../print/page.ts';
import { pdfOf } from '../print/pdf.ts';
import { type Printed, type PrintSource, printed } from '../print/print.ts';
import { svgOf } from '../print/svg.ts';
import { printTools } from '../print/tools.ts';
import { storedChallenge } from '../rooms/documents.ts';
import { readyNamed } from '../rooms/ready.ts';
import { deskNamed } from '../seats/access.ts';
import { ownRoom } from './desks.ts';
import { carried, type HttpParts } from './parts.ts';
import { type Asking, addressOf, SourceReader } from './print-source.ts';
import { refuse } from './refuse.ts';

const refused = (refusal: WireRefusal) => ({ ok: false, refusal }) as const;

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
  return { ok: true, value: { ask, source: await new SourceReader(parts, asking.value).source() } };
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
