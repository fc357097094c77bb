import { CircleCheck } from 'lucide-react';
import { useEffect, useState } from 'react';
import { type CalibrationNote, calibrationOf } from '../../shared/room/calibration.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { type JoinAddresses, ROUTES } from '../../shared/wire/protocol.ts';
import { berthsFor } from '../parts/berths.ts';
import { emblemIcon } from '../parts/emblem-icons.ts';
import { getJson } from '../parts/http.ts';
import { Icon } from '../parts/icon.tsx';
import { useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import './wall-scene.css';

const LOOK_EVERY = 4000;

/** The harbour wall: how to come in, and berths that fill. */
export function WallScene({ room }: { readonly room: RoomState }) {
  const { board } = useWords();
  const { length } = room.teams;
  return (
    <>
      <Head
        title={board.gather.title}
        word={length === 0 ? board.gather.empty : board.gather.teams(length)}
      />
      <div className="wall">
        <JoinPlate room={room} />
        <HarbourWall teams={room.teams} berths={berthsFor(length)} calibrations={room.calibrations} />
      </div>
    </>
  );
}

function JoinPlate({ room }: { readonly room: RoomState }) {
  const { board } = useWords();
  const address = useJoinAddress();
  return (
    <section className="join">
      <p className="join-scan">{board.gather.scan}</p>
      <img
        className="join-code"
        src={`${ROUTES.qr}?room=${encodeURIComponent(room.id)}&for=${encodeURIComponent(address)}`}
        alt=""
      />
      <p className="join-line">
        {board.gather.or} <strong className="join-address">{address}</strong>
      </p>
      <p className="join-line">
        {board.gather.andType} <strong className="join-word">{room.word}</strong>
      </p>
    </section>
  );
}

/** What has to be typed: the address in the code, without its beginning. */
function useJoinAddress(): string {
  const [address, setAddress] = useState(location.host);
  useEffect(() => {
    let current = true;
    const look = () =>
      void getJson<JoinAddresses>(ROUTES.addresses).then((answer) => {
        if (current && answer.ok)
          setAddress(answer.value.join.replace(/^https?:\/\//, '').replace(/\/$/, ''));
      });
    look();
    // The desk may choose another one.
    const timer = setInterval(look, LOOK_EVERY);
    return () => {
      current = false;
      clearInterval(timer);
    };
  }, []);
  return address;
}

interface HarbourWallProps {
  readonly teams: readonly Team[];
  readonly berths: number;
  readonly calibrations: readonly CalibrationNote[];
}

/** Berths along the wall, numbered, each with the emblem of its team and whether its robot is calibrated. */
function HarbourWall({ teams, berths, calibrations }: HarbourWallProps) {
  return (
    <ol className="berths" data-size={berths <= 12 ? 'large' : berths <= 20 ? 'middle' : 'small'}>
      {Array.from({ length: berths }, (_, i) => i + 1).map((number) => (
        <Berth
          key={number}
          number={number}
          team={teams.find((team) => team.berth === number)}
          calibrated={calibrationOf(calibrations, number)?.due === false}
          large={berths <= 12}
        />
      ))}
    </ol>
  );
}

interface BerthProps {
  readonly number: number;
  readonly team: Team | undefined;
  readonly calibrated: boolean;
  /** Has room for words beside the signs. */
  readonly large: boolean;
}

function Berth({ number, team, calibrated, large }: BerthProps) {
  const { board, emblems } = useWords();
  const name = team ? emblems.name(team.emblem) : null;
  return (
    <li className="berth" data-taken={team !== undefined} data-calibrated={calibrated}>
      <span className="berth-number" aria-hidden="true">
        {number}
      </span>
      {team && name ? (
        <>
          <Icon of={emblemIcon(team.emblem)} size="1em" />
          <span className="berth-name">{name}</span>
          <span className="only-read-aloud">{board.gather.taken(number, name)}</span>
        </>
      ) : (
        <span className="only-read-aloud">{board.gather.berth(number)}</span>
      )}
      {calibrated && (
        <span className="berth-calibrated">
          <Icon of={CircleCheck} size="1em" />
          <span className={large ? '' : 'only-read-aloud'}>{board.gather.calibrated}</span>
        </span>
      )}
    </li>
  );
}
