import type { ClientAsk } from '../../shared/wire/protocol.ts';
import { type Asking, useAsk } from '../parts/use-ask.ts';
import { useLink } from '../parts/use-link.tsx';
import { useDesk } from './desk-store.ts';

export interface Undoable extends Asking {
  /**
   * Sends a command and, once the room did it, offers to send `back`, with what is said of it meanwhile;
   * resolves to whether the room did it.
   */
  readonly askUndoable: (command: ClientAsk, back: ClientAsk, said: string) => Promise<boolean>;
}

/** Commands of one place on the desk, some of which another command takes back. */
export function useUndoable(): Undoable {
  const asking = useAsk();
  const link = useLink();
  const offerUndo = useDesk((state) => state.offerUndo);
  const askUndoable = async (command: ClientAsk, back: ClientAsk, said: string) => {
    const done = await asking.ask(command);
    if (done) offerUndo({ said, back: () => void link.command(back) });
    return done;
  };
  return { ...asking, askUndoable };
}
