import { useEffect, useMemo, useRef, useState } from 'react';
import { Challenge } from '../../../shared/documents/challenge.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import type { ParResult } from '../../../shared/search/par.ts';
import type { WireRefusal } from '../../../shared/wire/protocol.ts';
import { forgetText, keepText, keptText } from '../../parts/kept-text.ts';
import { saveOwn } from './own-challenges.ts';

/** What the server does not have yet is kept in this browser. */
const keyOf = (id: string): string => `harbour-lines.builder ${id}`;

/** What this browser has kept of a challenge that the server had not got; null where there is nothing. */
export function keptHere(id: string): Challenge | null {
  const text = keptText(keyOf(id));
  if (!text) return null;
  try {
    const read = parseDocument(Challenge, JSON.parse(text));
    return read.ok ? read.value : null;
  } catch {
    return null;
  }
}

/** Keeps a challenge in this browser until the server has it. */
export const keepHere = (challenge: Challenge): void =>
  keepText(keyOf(challenge.id), JSON.stringify(writeDocument(Challenge, challenge)));

/** Upwards to what a file holds, so that the design that was found has par itself. */
const upwards = (cost: number): number => Math.ceil(cost * 100 - 1e-6) / 100;

const withPar = (challenge: Challenge, par: ParResult | undefined): Challenge =>
  par?.kind === 'par' ? { ...challenge, par: upwards(par.cost) } : challenge;

/** A hand rests for so long before its work is saved, ms; and so long it is waited until that is tried again. */
const QUIET_MS = 800;
const AGAIN_MS = 3000;

export interface Saving {
  readonly state: 'saved' | 'saving' | 'not-saved';
  readonly refusal: WireRefusal | null;
}

export interface Saver extends Saving {
  /** Saves at once what the server does not have yet; resolves when it has answered. */
  readonly saveNow: () => Promise<void>;
}

/** Saves the challenge, with its par once that is known, whenever it has come to rest. `before`: what the server has. */
export function useSaving(challenge: Challenge, par: ParResult | undefined, before: Challenge | null): Saver {
  const [state, setState] = useState<Saving>({ state: 'saved', refusal: null });
  const [turn, setTurn] = useState(0);
  const saved = useRef({ challenge: before, text: '' });
  const waiting = useRef<(() => Promise<void>) | null>(null);
  const now = useMemo(() => withPar(challenge, par), [challenge, par]);
  useEffect(() => {
    void turn;
    const text = JSON.stringify(writeDocument(Challenge, now));
    if (challenge === saved.current.challenge && (saved.current.text === text || saved.current.text === ''))
      return;
    setState({ state: 'saving', refusal: null });
    keepText(keyOf(now.id), text);
    let current = true;
    let again: ReturnType<typeof setTimeout> | undefined;
    const save = async () => {
      const answer = await saveOwn(now);
      if (!answer.ok) {
        if (!current) return;
        setState({ state: 'not-saved', refusal: answer.refusal });
        again = setTimeout(() => setTurn((one) => one + 1), AGAIN_MS);
        return;
      }
      saved.current = { challenge, text };
      if (!current) return;
      waiting.current = null;
      forgetText(keyOf(now.id));
      setState({ state: 'saved', refusal: null });
    };
    waiting.current = save;
    const timer = setTimeout(() => void save(), QUIET_MS);
    return () => {
      current = false;
      clearTimeout(timer);
      clearTimeout(again);
    };
  }, [now, challenge, turn]);
  return { ...state, saveNow: async () => waiting.current?.() };
}
