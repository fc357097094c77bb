import { useEffect, useState } from 'react';
import type { Challenge, Variant } from '../../../shared/documents/challenge.ts';
import { Design, EMPTY_DESIGN } from '../../../shared/documents/design.ts';
import { writeDocument } from '../../../shared/documents/values.ts';
import { designOn } from '../../../shared/library/variants.ts';
import type { EditContext } from '../../editor/model.ts';
import { DrawingSession } from '../../editor/surface/session.ts';
import type { Link } from '../../link/connect.ts';
import { useLink } from '../../parts/use-link.tsx';
import { type DraftPlace, keepDrawing, keptDrawing, keyOf, type OnSheet, readAs } from './drafts.ts';
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
function catchUp(session: DrawingSession, kept: Design): void {
  if (written(kept) !== written(session.editor.design)) session.replace(kept);
}

/** The same drawing on this sheet, with all that was drawn before it. */
function movedTo(variant: Variant | null, before: Opened, challenge: Challenge): Opened {
  const { session, way, variant: from } = before;
  if (from === variant) return before;
  const { editor } = session;
  const move = (design: Design) => designOn(from, variant, challenge, design);
  const moved = new DrawingSession(move(editor.design), contextOf(challenge), movedWay(editor, move));
  return { session: moved, way, variant };
}

/** A drawing with its way back, on the sheet that it was left on. */
async function takeUp(
  place: DraftPlace,
  { design, variant }: OnSheet,
  challenge: Challenge,
): Promise<Opened> {
  const way = new KeptWay(place);
  const session = new DrawingSession(design, contextOf(challenge), await way.find(design));
  return { session, way, variant };
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
      const known = opened.get(key)?.session.editor.design;
      const found = await keptDrawing(place, variant);
      const left = found ?? { variant, design: serverDraft(link, place, challenge, variant) };
      const before = opened.get(key) ?? (await takeUp(place, left, challenge));
      if (!here) return;
      const now = movedTo(variant, before, challenge);
      opened.set(key, now);
      // What was drawn while this was looked up is newer.
      if (found && before.session.editor.design === known)
        catchUp(now.session, designOn(found.variant, variant, challenge, found.design));
      setSession(now.session);
      if (now === before) return;
      void keepDrawing(place, { variant, design: now.session.editor.design });
      void now.way.keep(now.session.editor);
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

/**
 * As the server has it, else as the challenge begins. Where the lines are given, what was drawn on others is another
 * drawing.
 */
function serverDraft(
  link: Link,
  { team, round, gentler }: DraftPlace,
  challenge: Challenge,
  variant: Variant | null,
): Design {
  const draft = link.state().drafts[team];
  const read = draft?.round === round ? readAs(Design, draft.design) : null;
  const from = draft?.variant === undefined ? variant : draft.variant;
  const { begin } = contextOf(challenge);
  const design = read && designOn(from, variant, challenge, read);
  const lines = ({ drawing }: Design) => JSON.stringify(drawing.lines);
  return !design || (gentler && lines(design) !== lines(begin)) ? begin : design;
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
