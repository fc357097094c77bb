import { useCallback, useEffect, useState } from 'react';
import type { JoinAddresses } from '../../shared/wire/protocol.ts';
import { chooseAddress, listAddresses } from './session.ts';

/** A laptop may join the tablets' network while the desk is open, ms. */
const LOOK_EVERY = 10_000;

/** Where tablets come in; null until the server has said so. */
export function useAddresses(): {
  readonly addresses: JoinAddresses | null;
  readonly choose: (address: string) => Promise<void>;
} {
  const [addresses, setAddresses] = useState<JoinAddresses | null>(null);
  useEffect(() => {
    let current = true;
    const look = () =>
      void listAddresses().then((answer) => current && answer.ok && setAddresses(answer.value));
    look();
    const timer = setInterval(look, LOOK_EVERY);
    return () => {
      current = false;
      clearInterval(timer);
    };
  }, []);
  const choose = useCallback(async (address: string) => {
    const answer = await chooseAddress(address);
    if (answer.ok) setAddresses(answer.value);
  }, []);
  return { addresses, choose };
}

/** The part of an address that has to be typed. */
export const hostOf = (address: string): string => address.replace(/^https?:\/\//, '').replace(/\/$/, '');
