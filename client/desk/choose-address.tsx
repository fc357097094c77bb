import { useId } from 'react';
import type { JoinAddresses } from '../../shared/wire/protocol.ts';
import { useAnnounce } from '../parts/announcer.tsx';
import { hostOf } from './use-addresses.ts';
import { useWholeWords } from './whole-words.ts';

export interface ChooseAddressProps {
  readonly addresses: JoinAddresses;
  readonly onChoose: (address: string) => Promise<void>;
}

/** Which network the code leads to, where this machine is in several and nobody has settled it from outside. */
export function ChooseAddress({ addresses, onChoose }: ChooseAddressProps) {
  const { check } = useWholeWords();
  const announce = useAnnounce();
  const id = useId();
  if (addresses.fixed || addresses.all.length < 2) return null;
  const choose = async (address: string) => {
    await onChoose(address);
    announce(check.desk.addressNow(hostOf(address)));
  };
  return (
    <div className="gather-choice">
      <label htmlFor={id}>{check.desk.chooseAddress}</label>
      <select
        id={id}
        value={addresses.join}
        aria-describedby={`${id}-note`}
        onChange={(event) => void choose(event.target.value)}
      >
        {addresses.all.map(({ address, network }) => (
          <option key={address} value={address}>
            {check.desk.place(hostOf(address), network)}
          </option>
        ))}
      </select>
      <p id={`${id}-note`} className="desk-quiet">
        {check.desk.chooseNote}
      </p>
    </div>
  );
}
