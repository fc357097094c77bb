import { Copy, MonitorUp } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { RoomState } from '../../shared/room/state.ts';
import { useAnnounce } from '../parts/announcer.tsx';
import { Button } from '../parts/button.tsx';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { Icon } from '../parts/icon.tsx';
import { useServerTime } from '../parts/use-server-time.ts';
import { useWords } from '../parts/use-words.ts';
import { type Addresses, listAddresses, qrPath } from './session.ts';
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
        <Trouble room={room} />
      </section>
      <section aria-labelledby="gather-teams">
        <div className="gather-count">
          <h2 id="gather-teams">{desk.gathering.teams(room.teams.length)}</h2>
          <a
            className="button"
            href={`/board?room=${encodeURIComponent(room.id)}`}
            target="_blank"
            rel="noreferrer"
          >
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
      </section>
    </main>
  );
}

/** If no tablet has come in for so long, the likely causes are said without being asked for, ms. */
const NOBODY_FOR = 60_000;

function Trouble({ room }: { readonly room: RoomState }) {
  const { desk } = useWords();
  const now = useServerTime(room.teams.length === 0 ? 5000 : null);
  const late = room.teams.length === 0 && now - room.openedAt > NOBODY_FOR;
  return (
    <details className="gather-trouble" open={late} key={String(late)}>
      <summary>{desk.gathering.trouble}</summary>
      <ul>
        {desk.gathering.troubleHow.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}

function JoinCard({ word }: { readonly word: string }) {
  const { desk } = useWords();
  const addresses = useAddresses();
  return (
    <div className="gather-card desk-sheet">
      <img src={qrPath(word)} alt="" width={236} height={236} />
      <dl>
        <dt>{desk.gathering.word}</dt>
        <dd className="gather-word">{word}</dd>
        <dt>{desk.gathering.address}</dt>
        <dd className="gather-address">{addresses ? hostOf(addresses.join) : location.host}</dd>
        {addresses && addresses.all.length > 1 && (
          <>
            <dt>{desk.gathering.more}</dt>
            <dd className="desk-quiet">
              {desk.list(addresses.all.filter((a) => a !== addresses.join).map(hostOf))}
            </dd>
          </>
        )}
        <dd>
          <CopyLink address={addresses?.join ?? location.origin} word={word} />
        </dd>
      </dl>
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

function useAddresses(): Addresses | null {
  const [addresses, setAddresses] = useState<Addresses | null>(null);
  useEffect(() => {
    let current = true;
    void listAddresses().then((answer) => current && answer.ok && setAddresses(answer.value));
    return () => {
      current = false;
    };
  }, []);
  return addresses;
}

/** The part of an address that has to be typed. */
const hostOf = (address: string): string => address.replace(/^https?:\/\//, '').replace(/\/$/, '');
