import type { HttpRefusal, WireRefusal } from '../../shared/wire/protocol.ts';

export type HttpAnswer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusal: WireRefusal };

const NO_SERVER: WireRefusal = { code: 'server-trouble' };

async function answerOf<T>(asked: Promise<Response>): Promise<HttpAnswer<T>> {
  try {
    const response = await asked;
    const text = await response.text();
    if (response.ok) return { ok: true, value: (text === '' ? null : JSON.parse(text)) as T };
    return { ok: false, refusal: (JSON.parse(text) as HttpRefusal).refusal };
  } catch {
    // No server, or not ours: either way there is no answer that could be read.
    return { ok: false, refusal: NO_SERVER };
  }
}

/** GET of one of ROUTES. Never throws. */
export const getJson = <T>(path: string): Promise<HttpAnswer<T>> =>
  answerOf(fetch(path, { headers: { accept: 'application/json' } }));

/** POST of a JSON body (a string is sent as it is). Never throws. */
export const postJson = <T>(path: string, body: unknown): Promise<HttpAnswer<T>> =>
  answerOf(
    fetch(path, {
      method: 'POST',
      headers: { 'content-type': 'application/json', accept: 'application/json' },
      body: typeof body === 'string' ? body : JSON.stringify(body),
    }),
  );
