import { useEffect, useState } from 'react';
import type { ClientAsk, WireRefusal } from '../../../shared/wire/protocol.ts';
import { useLink, useLinkState } from '../../parts/use-link.tsx';

export interface Sending {
  readonly handIn: () => void;
  /** Something is on its way and has no answer yet. */
  readonly waiting: boolean;
  /** There is no connection, so it waits on this tablet. */
  readonly away: boolean;
  readonly refusal: WireRefusal | null;
}

/**
 * Hands in what `asked` gives; `known` entries are there already. The link keeps it until it is answered, over lost
 * connections and reloads.
 */
export function useHandIn(asked: () => ClientAsk, known: number): Sending {
  const link = useLink();
  const away = useLinkState((state) => state.status.kind !== 'live');
  const queued = useLinkState((state) => state.handingIn);
  const [sent, setSent] = useState<{ readonly known: number } | null>(null);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const handIn = () => {
    setRefusal(null);
    setSent({ known });
    void link.command(asked()).then((answer) => {
      if (answer.ok) return;
      setSent(null);
      setRefusal(answer.refusal);
    });
  };
  // The entry itself, coming back as an event, is the answer that counts.
  useEffect(() => {
    if (sent && known > sent.known) setSent(null);
  }, [sent, known]);
  return { handIn, waiting: sent !== null || queued > 0, away, refusal };
}
