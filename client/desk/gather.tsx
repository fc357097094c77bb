import { Copy, MonitorUp, Moon } from 'lucide-react';
import { useState } from 'react';
import type { RoomId, RoomState } from '../../shared/room/state.ts';
import { useAnnounce } from '../parts/announcer.tsx';
import { Button } from '../parts/button.tsx';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { RobotsOnWall } from './before/robots.tsx';
import { ChooseAddress } from './choose-address.tsx';
import { useDesk } from './desk-store.ts';
import { boardPath, qrPath } from './session.ts';
import { Trouble } from './trouble.tsx';
import { hostOf, useAddresses } from './use-addresses.ts';
import { useWholeWords } from './whole-words.ts';
import './gather.css';

/** How teams come in, and who has. */
export function GatherStep({ room }: { readonly room: RoomState }) {
  const { desk, calibration } = useWholeWords();
  const [leaf, setLeaf] = useState<(typeof LEAVES)[number]>('teams');
  return (
    <main className="desk-main gather">
      <section className="gather-in" aria-labelledby="gather-title">
        <h2 id="gather-title">{desk.gathering.title}</h2>
        <p>{desk.gathering.how}</p>
        <JoinCard room={room.id} word={room.word} />
      </section>
      <section aria-labelledby="gather-teams">
        <div className="gather-count">
          <h2 id="gather-teams">{desk.gathering.teams(room.teams.length)}</h2>
          <a className="button" href={boardPath(room.id)} target="_blank" rel="noreferrer">
            <Icon of={MonitorUp} />
            {desk.gathering.boardOpen}
          </a>
        </div>
        <nav className="gather-leaves" aria-label={calibration.leaves}>
          {LEAVES.map((each) => (
            <Button key={each} aria-pressed={each === leaf} onClick={() => setLeaf(each)}>
              {each === 'teams' ? calibration.teams : calibration.title}
            </Button>
          ))}
        </nav>
        {leaf === 'robots' ? <RobotsOnWall room={room} /> : <Teams room={room} />}
      </section>
    </main>
  );
}

const LEAVES = ['teams', 'robots'] as const;

/** Who lies in which berth; a tap opens a team's seat. */
function Teams({ room }: { readonly room: RoomState }) {
  const { desk } = useWholeWords();
  const openSeat = useDesk((state) => state.openSeat);
  return (
    <>
      {room.teams.length === 0 && <p className="desk-quiet">{desk.gathering.noTeams}</p>}
      <ul className="gather-teams">
        {room.teams.map((team) => (
          <li key={team.id}>
            <button
              type="button"
              title={desk.seats.open}
              data-rests={team.seatFree}
              onClick={() => openSeat(team.id)}
            >
              <span className="desk-quiet">
                <span className="only-read-aloud">{desk.gathering.berth(team.berth)}</span>
                <span aria-hidden="true">{team.berth}</span>
              </span>
              <EmblemBadge emblem={team.emblem} />
              {team.seatFree && <Icon of={Moon} size={18} label={desk.seats.isFree} />}
            </button>
          </li>
        ))}
      </ul>
      <Removed room={room} />
      <Trouble room={room} />
    </>
  );
}

/** Teams that were taken out, each with its way back. */
function Removed({ room }: { readonly room: RoomState }) {
  const { desk, emblems } = useWholeWords();
  const { ask, refusal, busy } = useAsk();
  if (room.removed.length === 0) return null;
  return (
    <div className="gather-removed">
      <h3>{desk.seats.removedTitle}</h3>
      <ul>
        {room.removed.map((team) => (
          <li key={team.id}>
            <Button
              aria-label={desk.seats.putBackTeam(emblems.name(team.emblem))}
              disabled={busy}
              onClick={() => void ask({ kind: 'put-back-team', team: team.id })}
            >
              <EmblemBadge emblem={team.emblem} size={20} />
              {desk.seats.putBack}
            </Button>
          </li>
        ))}
      </ul>
      <Refused refusal={refusal} />
    </div>
  );
}

function JoinCard({ room, word }: { readonly room: RoomId; readonly word: string }) {
  const { desk } = useWholeWords();
  const { addresses, choose } = useAddresses();
  const join = addresses?.join ?? location.origin;
  return (
    <div className="gather-card desk-sheet">
      <img src={qrPath(room, join)} alt="" width={236} height={236} />
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
  const { desk } = useWholeWords();
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
