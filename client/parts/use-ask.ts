import { useCallback, useState } from 'react';
import type { ClientAsk, WireRefusal } from '../../shared/wire/protocol.ts';
import { useLink } from './use-link.tsx';

export interface Asking {
  /** Sends a command; resolves to whether the room did it. */
  readonly ask: (command: ClientAsk) => Promise<boolean>;
  /** Why the last one was refused, until the next one. */
  readonly refusal: WireRefusal | null;
  /** One is on its way. */
  readonly busy: boolean;
}

/** Commands of one place on the page, with the refusal shown at that place. */
export function useAsk(): Asking {
  const link = useLink();
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const [waiting, setWaiting] = useState(0);
  const ask = useCallback(
    async (command: ClientAsk) => {
      setRefusal(null);
      setWaiting((n) => n + 1);
      const answer = await link.command(command);
      setWaiting((n) => n - 1);
      // What is already so needs no complaint: somebody pressed twice.
      const fine = answer.ok || answer.refusal.code === 'already-so';
      if (!answer.ok && !fine) setRefusal(answer.refusal);
      return fine;
    },
    [link],
  );
  return { ask, refusal, busy: waiting > 0 };
}
