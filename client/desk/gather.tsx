import { Copy, MonitorUp } from 'lucide-react';
import { useState } from 'react';
import type { RoomState } from '../../shared/room/state.ts';
import { useAnnounce } from '../parts/announcer.tsx';
import { Button } from '../parts/button.tsx';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { Icon } from '../parts/icon.tsx';
import { useWords } from '../parts/use-words.ts';
import { ChooseAddress } from './choose-address.tsx';
import { boardPath, qrPath } from './session.ts';
import { Trouble } from './trouble.tsx';
import { hostOf, useAddresses } from './use-addresses.ts';
import './gather.css';

/** How teams come in, and who has. */
export function GatherStep({ room }: { readonly room: RoomState }) {
  const { desk } = useWords();
  return (
    <main className="desk-main gather">
      <section className="gather-in" aria-labelledby="gather-title">
        <h2 id="gather-title">{desk.gathering.title}</h2>
        <p>{desk.gathering.how}</p>
        <JoinCard word={room.word} />
      </section>
      <section aria-labelledby="gather-teams">
        <div className="gather-count">
          <h2 id="gather-teams">{desk.gathering.teams(room.teams.length)}</h2>
          <a className="button" href={boardPath(room.id)} target="_blank" rel="noreferrer">
            <Icon of={MonitorUp} />
            {desk.gathering.boardOpen}
          </a>
        </div>
        {room.teams.length === 0 && <p className="desk-quiet">{desk.gathering.noTeams}</p>}
        <ul className="gather-teams">
          {room.teams.map((team) => (
            <li key={team.id}>
              <span className="desk-quiet" title={desk.gathering.berth(team.berth)}>
                {team.berth}
              </span>
              <EmblemBadge emblem={team.emblem} />
            </li>
          ))}
        </ul>
        <Trouble room={room} />
      </section>
    </main>
  );
}

function JoinCard({ word }: { readonly word: string }) {
  const { desk } = useWords();
  const { addresses, choose } = useAddresses();
  const join = addresses?.join ?? location.origin;
  return (
    <div className="gather-card desk-sheet">
      <img src={qrPath(word, join)} alt="" width={236} height={236} />
      <dl>
        <dt>{desk.gathering.word}</dt>
        <dd className="gather-word">{word}</dd>
        <dt>{desk.gathering.address}</dt>
        <dd className="gather-address">{hostOf(join)}</dd>
        <dd>
          <CopyLink address={join} word={word} />
        </dd>
      </dl>
      {addresses && <ChooseAddress addresses={addresses} onChoose={choose} />}
    </div>
  );
}

function CopyLink({ address, word }: { readonly address: string; readonly word: string }) {
  const { desk } = useWords();
  const announce = useAnnounce();
  const [copied, setCopied] = useState(false);
  // The clipboard exists on https and on this machine only; elsewhere the address can be read.
  if (!navigator.clipboard) return null;
  const copy = async () => {
    await navigator.clipboard.writeText(new URL(`/j?word=${encodeURIComponent(word)}`, address).href);
    setCopied(true);
    announce(desk.gathering.copied);
  };
  return (
    <Button icon={<Icon of={Copy} />} onClick={() => void copy()}>
      {copied ? desk.gathering.copied : desk.gathering.copy}
    </Button>
  );
}
