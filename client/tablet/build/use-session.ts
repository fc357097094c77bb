import { useEffect, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { Design, EMPTY_DESIGN } from '../../../shared/documents/design.ts';
import { writeDocument } from '../../../shared/documents/values.ts';
import type { EditContext } from '../../editor/model.ts';
import { DrawingSession } from '../../editor/surface/session.ts';
import type { Link } from '../../link/connect.ts';
import { useLink } from '../../parts/use-link.tsx';
import { type DraftPlace, keepDraft, keptDraft, keyOf, readAs } from './drafts.ts';
import { KeptWay } from './way.ts';

export function contextOf(challenge: Challenge): EditContext {
  return {
    sheet: challenge.sheet,
    kit: challenge.kit,
    play: challenge.play,
    mostMarks: challenge.limits.marks ?? null,
    begin: challenge.begin ?? EMPTY_DESIGN,
  };
}

/**
 * Sessions of this page by the drawing that they hold: when the room looks at the board in between and
 * comes back, the way back is still whole.
 */
const opened = new Map<string, { readonly session: DrawingSession; readonly way: KeptWay }>();

const written = (design: Design): string => JSON.stringify(writeDocument(Design, design));

/** Takes up, as a step that can be undone, what a newer tab of this browser has drawn meanwhile. */
function catchUp(session: DrawingSession, kept: Design | null): DrawingSession {
  if (kept && written(kept) !== written(session.editor.design)) session.replace(kept);
  return session;
}

/**
 * The team's drawing of this round, as it was left: in this browser, else on this page, else as the
 * server kept it (the seat moved here), else as the challenge begins. null while that is looked up.
 */
export function useSession(challenge: Challenge, place: DraftPlace): DrawingSession | null {
  const link = useLink();
  const { room, team, round, moves, gentler = false } = place;
  const key = keyOf(place);
  const [session, setSession] = useState<DrawingSession | null>(null);
  useEffect(() => {
    let here = true;
    const context = contextOf(challenge);
    const look = async () => {
      const place = { room, team, round, moves, gentler };
      const kept = await keptDraft(Design, place);
      const before = opened.get(key);
      if (before) return here && setSession(catchUp(before.session, kept));
      const design = kept ?? serverDraft(link, place, context.begin) ?? context.begin;
      const way = new KeptWay(place);
      const fresh = { way, session: new DrawingSession(design, context, await way.find(design)) };
      if (!here) return;
      opened.set(key, fresh);
      setSession(fresh.session);
    };
    void look();
    return () => {
      here = false;
    };
  }, [link, challenge, room, team, round, moves, gentler, key]);
  useKept(session, place, link);
  useKeptWay(session, key);
  return session;
}

/** Where the lines are given, what was drawn on other lines is another drawing. */
function serverDraft(link: Link, { team, round, gentler }: DraftPlace, begin: Design): Design | null {
  const draft = link.state().drafts[team];
  const design = draft?.round === round ? readAs(Design, draft.design) : null;
  const lines = ({ drawing }: Design) => JSON.stringify(drawing.lines);
  return design && gentler && lines(design) !== lines(begin) ? null : design;
}

/** Keeps the way back and forth, so that it is there after a reload. */
function useKeptWay(session: DrawingSession | null, key: string): void {
  useEffect(() => {
    const way = opened.get(key)?.way;
    if (!session || !way) return;
    return session.store.subscribe((now, before) => {
      if (now.editor.design !== before.editor.design) void way.keep(now.editor);
    });
  }, [session, key]);
}

/** Keeps every change in this browser and tells it to the server, which thins it out to one a second. */
function useKept(session: DrawingSession | null, place: DraftPlace, link: Link): void {
  const { room, team, round, moves, gentler = false } = place;
  useEffect(() => {
    if (!session) return;
    const tell = (design: Design) =>
      link.tell({ kind: 'draft', round, design: writeDocument(Design, design) });
    tell(session.editor.design);
    return session.store.subscribe((now, before) => {
      if (now.editor.design === before.editor.design) return;
      void keepDraft(Design, { room, team, round, moves, gentler }, now.editor.design);
      tell(now.editor.design);
    });
  }, [session, room, team, round, moves, gentler, link]);
}
