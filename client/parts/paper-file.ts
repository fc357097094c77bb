import { PAGES_HEAD, type PrintAsk, type PrintProgress, printPath } from '../../shared/wire/print.ts';
import type { HttpRefusal, WireRefusal } from '../../shared/wire/protocol.ts';
import type { HttpAnswer } from './http.ts';
import { saveFile } from './save-file.ts';

/** What a page of this project wants on paper; what is left out takes its default. */
export type Wanted = Omit<Partial<PrintAsk>, 'format' | 'progress'> &
  Pick<PrintAsk, 'kind' | 'language' | 'units'>;

const NO_SERVER: WireRefusal = { code: 'server-trouble' };
const NEW_LINE = 10;

async function refusalOf(response: Response): Promise<WireRefusal> {
  try {
    return ((await response.json()) as HttpRefusal).refusal;
  } catch {
    return NO_SERVER;
  }
}

export interface FirstLook {
  /** An address of the browser's own; give it back with URL.revokeObjectURL. */
  readonly url: string;
  readonly pages: number;
}

/** One page as a picture. Never throws; null where `signal` ended it. */
export async function firstLook(wanted: Wanted, signal: AbortSignal): Promise<HttpAnswer<FirstLook> | null> {
  try {
    const response = await fetch(printPath({ ...wanted, format: 'svg' }), { signal });
    if (!response.ok) return { ok: false, refusal: await refusalOf(response) };
    const pages = Number(response.headers.get(PAGES_HEAD) ?? 1);
    const picture = new Blob([await response.arrayBuffer()], { type: 'image/svg+xml' });
    return { ok: true, value: { url: URL.createObjectURL(picture), pages } };
  } catch {
    return signal.aborted ? null : { ok: false, refusal: NO_SERVER };
  }
}

export interface SaveCare {
  readonly told: (progress: { readonly done: number; readonly of: number }) => void;
  readonly signal: AbortSignal;
}

/** Has a PDF made, hears how far it is, and saves it. Never throws; null where `signal` ended it. */
export async function savePdf(wanted: Wanted, { told, signal }: SaveCare): Promise<HttpAnswer<null> | null> {
  try {
    const response = await fetch(printPath({ ...wanted, format: 'pdf', progress: 'yes' }), { signal });
    if (!response.ok || !response.body) return { ok: false, refusal: await refusalOf(response) };
    const { bytes, name } = await received(response.body.getReader(), told);
    saveFile(new Blob([bytes], { type: 'application/pdf' }), name);
    return { ok: true, value: null };
  } catch {
    return signal.aborted ? null : { ok: false, refusal: NO_SERVER };
  }
}

/** Lines that tell how far it is; the last one names the file, whose bytes follow. */
async function received(reader: ReadableStreamDefaultReader<Uint8Array>, told: SaveCare['told']) {
  let held = new Uint8Array(0);
  const more = async () => {
    const { done, value } = await reader.read();
    if (done) throw new Error('the file broke off');
    const both = new Uint8Array(held.length + value.length);
    both.set(held);
    both.set(value, held.length);
    held = both;
  };
  for (;;) {
    const end = held.indexOf(NEW_LINE);
    if (end < 0) {
      await more();
      continue;
    }
    const line = JSON.parse(new TextDecoder().decode(held.subarray(0, end))) as PrintProgress;
    held = held.slice(end + 1);
    if ('done' in line) {
      told(line);
      continue;
    }
    while (held.length < line.bytes) await more();
    return { bytes: held, name: line.name };
  }
}
