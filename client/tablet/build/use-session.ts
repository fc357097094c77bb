import { useEffect, useState } from 'react';
import type { Challenge, Variant } from '../../../shared/documents/challenge.ts';
import { Design, EMPTY_DESIGN } from '../../../shared/documents/design.ts';
import { writeDocument } from '../../../shared/documents/values.ts';
import { designOn } from '../../../shared/library/variants.ts';
import type { EditContext } from '../../editor/model.ts';
import { DrawingSession } from '../../editor/surface/session.ts';
import type { Link } from '../../link/connect.ts';
import { useLink } from '../../parts/use-link.tsx';
import { type DraftPlace, keepDrawing, keptDrawing, keyOf, readAs } from './drafts.ts';
import { KeptWay, movedWay } from './way.ts';

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
interface Opened {
  readonly session: DrawingSession;
  readonly way: KeptWay;
  /** The sheet that it is on. */
  readonly variant: Variant | null;
}
const opened = new Map<string, Opened>();

const written = (design: Design): string => JSON.stringify(writeDocument(Design, design));

/** Takes up, as a step that can be undone, what a newer tab of this browser has drawn meanwhile. */
function catchUp(session: DrawingSession, kept: Design | null): DrawingSession {
  if (kept && written(kept) !== written(session.editor.design)) session.replace(kept);
  return session;
}

/** The same drawing on another sheet, with all that was drawn before it. */
function movedTo(
  variant: Variant | null,
  { session, way, variant: from }: Opened,
  challenge: Challenge,
): Opened {
  const { editor } = session;
  const move = (design: Design) => designOn(from, variant, challenge, design);
  const moved = new DrawingSession(move(editor.design), contextOf(challenge), movedWay(editor, move));
  return { session: moved, way, variant };
}

/**
 * The team's drawing of this round, as it was left: in this browser, else on this page, else as the
 * server kept it (the seat moved here), else as the challenge begins. Where the team has another sheet now, it comes
 * along. null while that is looked up.
 */
export function useSession(
  challenge: Challenge,
  place: DraftPlace,
  variant: Variant | null,
): DrawingSession | null {
  const link = useLink();
  const { room, team, round, moves, gentler = false } = place;
  const key = keyOf(place);
  const [session, setSession] = useState<DrawingSession | null>(null);
  useEffect(() => {
    let here = true;
    const place = { room, team, round, moves, gentler };
    const look = async () => {
      const found = await keptDrawing(place, variant);
      const kept = found && designOn(found.variant, variant, challenge, found.design);
      const before = opened.get(key);
      if (before) {
        if (!here) return;
        const now = before.variant === variant ? before : movedTo(variant, before, challenge);
        opened.set(key, now);
        setSession(catchUp(now.session, kept));
        if (now === before) return;
        void keepDrawing(place, { variant, design: now.session.editor.design });
        return void now.way.keep(now.session.editor);
      }
      const context = contextOf(challenge);
      const design = kept ?? serverDraft(link, place, challenge, variant) ?? context.begin;
      const way = new KeptWay(place);
      const session = new DrawingSession(design, context, await way.find(design));
      if (!here) return;
      opened.set(key, { way, session, variant });
      setSession(session);
    };
    void look();
    return () => {
      here = false;
    };
  }, [link, challenge, room, team, round, moves, gentler, variant, key]);
  useKept(session, place, variant, link);
  useKeptWay(session, key);
  return session;
}

/** Where the lines are given, what was drawn on other lines is another drawing. */
function serverDraft(
  link: Link,
  { team, round, gentler }: DraftPlace,
  challenge: Challenge,
  variant: Variant | null,
): Design | null {
  const draft = link.state().drafts[team];
  const read = draft?.round === round ? readAs(Design, draft.design) : null;
  const from = draft?.variant === undefined ? variant : draft.variant;
  const design = read && designOn(from, variant, challenge, read);
  const lines = ({ drawing }: Design) => JSON.stringify(drawing.lines);
  const begin = challenge.begin ?? EMPTY_DESIGN;
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
function useKept(
  session: DrawingSession | null,
  place: DraftPlace,
  variant: Variant | null,
  link: Link,
): void {
  const { room, team, round, moves, gentler = false } = place;
  useEffect(() => {
    if (!session) return;
    const tell = (design: Design) =>
      link.tell({ kind: 'draft', round, variant, design: writeDocument(Design, design) });
    tell(session.editor.design);
    return session.store.subscribe((now, before) => {
      if (now.editor.design === before.editor.design) return;
      void keepDrawing({ room, team, round, moves, gentler }, { variant, design: now.editor.design });
      tell(now.editor.design);
    });
  }, [session, room, team, round, moves, gentler, variant, link]);
}
