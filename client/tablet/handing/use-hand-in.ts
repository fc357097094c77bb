import { useCallback, useEffect, useState } from 'react';
import { Design } from '../../../shared/documents/design.ts';
import { writeDocument } from '../../../shared/documents/values.ts';
import type { WireRefusal } from '../../../shared/wire/protocol.ts';
import { useLink, useLinkState } from '../../parts/use-link.tsx';
import type { DrawingSession } from '../build/session.ts';

export interface Sending {
  readonly handIn: () => void;
  /** A drawing is on its way and has no answer yet. */
  readonly waiting: boolean;
  /** There is no connection, so it waits on this tablet. */
  readonly away: boolean;
  readonly refusal: WireRefusal | null;
}

/** Hands the drawing in. The link keeps it until it is answered, over lost connections and reloads. */
export function useHandIn(session: DrawingSession, round: number, known: number): Sending {
  const link = useLink();
  const away = useLinkState((state) => state.status.kind !== 'live');
  const queued = useLinkState((state) => state.waiting);
  const [sent, setSent] = useState<{ readonly known: number } | null>(null);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const handIn = useCallback(() => {
    setRefusal(null);
    setSent({ known });
    const design = writeDocument(Design, session.editor.design);
    void link.command({ kind: 'hand-in', round, design }).then((answer) => {
      if (answer.ok) return;
      setSent(null);
      setRefusal(answer.refusal);
    });
  }, [link, session, round, known]);
  // The entry itself, coming back as an event, is the answer that counts.
  useEffect(() => {
    if (sent && known > sent.known) setSent(null);
  }, [sent, known]);
  return { handIn, waiting: sent !== null || queued > 0, away, refusal };
}
