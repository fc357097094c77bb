import { useEffect, useState } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import type { PrepCheck } from '../../../shared/prep/prep-check.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { ROUTES } from '../../../shared/wire/protocol.ts';
import { hostOf, useAddresses } from '../use-addresses.ts';
import { useArrivals } from '../use-arrivals.ts';
import { useWholeWords } from '../whole-words.ts';

/** What the desk sees of a line of the check by itself. */
export interface Seen {
  readonly done: boolean;
  readonly said: string | null;
}
const NOTHING: Seen = { done: false, said: null };

const LOOK_EVERY = 10_000;
/** A machine in no network can be reached from itself alone. */
const OWN = /^(localhost|127\.|\[::1\])/;

/** Each line of the check as far as this page can tell; the room's state where a room is open. */
export function useSeen(room: RoomState | null, kit: Kit | null): Readonly<Record<PrepCheck, Seen>> {
  const { prepCheck: words, check } = useWholeWords();
  const serves = useServes();
  const { addresses } = useAddresses();
  const arrivals = useArrivals(true);
  const host = hostOf(addresses?.join ?? location.origin);
  const reached = !OWN.test(host);
  const tested = arrivals?.check ?? null;
  return {
    pages: { done: serves, said: serves ? words.serves : words.silent },
    address: { done: reached, said: reached ? words.host(host) : words.noHost },
    tablet: {
      done: tested?.live ?? false,
      said: tested ? check.desk.arrived(arrivals!) : words.tryTablet(`${host}${ROUTES.checkPage}`),
    },
    kit: { done: kit !== null, said: kit && words.kit(kit.name) },
    charger: { done: room?.chargerWatched ?? false, said: null },
    robots: NOTHING,
    paper: NOTHING,
    tables: NOTHING,
  };
}

/** Whether the server gives out the board's page now; this page itself may be an old one. */
function useServes(): boolean {
  const [serves, setServes] = useState(true);
  useEffect(() => {
    let current = true;
    const look = async () => {
      const answer = await fetch('/board', { method: 'HEAD' }).catch(() => null);
      if (current) setServes(answer?.ok ?? false);
    };
    void look();
    const timer = setInterval(() => void look(), LOOK_EVERY);
    return () => {
      current = false;
      clearInterval(timer);
    };
  }, []);
  return serves;
}
