import { Hand, LogOut, Pause, Play } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { RoomState } from '../../shared/room/state.ts';
import type { Step } from '../../shared/wording/en/desk.ts';
import { Button } from '../parts/button.tsx';
import { DeviceSettingsButton } from '../parts/device-settings-dialog.tsx';
import { Icon } from '../parts/icon.tsx';
import { Notice } from '../parts/notice.tsx';
import { Refused, refusalSentence } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { useLink, useLinkState } from '../parts/use-link.tsx';
import { BriefStep } from './brief.tsx';
import { BuildStep } from './build.tsx';
import { BuildingTime } from './building-time.tsx';
import { ClassPictureView } from './class-picture.tsx';
import { CloseStep } from './close.tsx';
import { type Leaf, useDesk } from './desk-store.ts';
import { DriveStep } from './drive.tsx';
import { GatherStep } from './gather.tsx';
import { useKeys } from './keys.ts';
import { KeysHelp } from './keys-help.tsx';
import { PaperView } from './paper.tsx';
import { PrepareStep } from './prepare.tsx';
import { Rail } from './rail.tsx';
import { Scenes } from './scenes.tsx';
import { boardPath, goToRoom } from './session.ts';
import { ShowStep } from './show.tsx';
import { reachable, STEPS } from './steps.ts';
import { TeamNoteDialog } from './team-note.tsx';
import { TeamSeatDialog } from './team-seat.tsx';
import { UndoBar } from './undo.tsx';
import { useNext } from './use-next.ts';
import { useWholeWords } from './whole-words.ts';

const SHUT: readonly string[] = ['no-seat', 'unknown-room'];

/** The desk of one room. */
export function Desk() {
  const room = useLinkState((state) => state.room);
  const status = useLinkState((state) => state.status);
  // A link that was revoked, or a room that was erased: nothing of it is shown any longer.
  const shut = status.kind === 'refused' && SHUT.includes(status.refusal.code);
  return room && !shut ? <DeskOfRoom room={room} /> : <DeskWithoutRoom />;
}

function DeskWithoutRoom() {
  const words = useWholeWords();
  const status = useLinkState((state) => state.status);
  return (
    <main className="desk-alone">
      <h1>{words.desk.title}</h1>
      {status.kind === 'refused' ? (
        <Notice tone="stops" role="alert">
          {status.refusal.code === 'unknown-room'
            ? words.desk.unknownRoom
            : status.refusal.code === 'no-seat'
              ? words.desk.noSeat
              : refusalSentence(words, status.refusal)}
        </Notice>
      ) : (
        <p role="status">{words.desk.status.connecting} …</p>
      )}
      <Button onClick={() => goToRoom(null)}>{words.desk.toRooms}</Button>
      <DeviceSettingsButton />
      {/* Who erases the room that the desk is in can take that back here. */}
      <UndoBar />
    </main>
  );
}

const STEP_VIEWS = {
  prepare: PrepareStep,
  gather: GatherStep,
  brief: BriefStep,
  build: BuildStep,
  show: ShowStep,
  drive: DriveStep,
  close: CloseStep,
} as const satisfies Record<Step, unknown>;

const LEAVES = { paper: PaperView, picture: ClassPictureView } as const satisfies Record<Leaf, unknown>;

function DeskOfRoom({ room }: { readonly room: RoomState }) {
  const { step: looked, leaf, lookAt, openLeaf, follow } = useDesk();
  const step: Step = looked ?? room.phase;
  useEffect(() => follow(room.phase), [room.phase, follow]);
  const View = leaf ? LEAVES[leaf] : STEP_VIEWS[step];
  return (
    <div className="desk">
      <DeskHead room={room} step={step} />
      <StatusLine key={room.id} paused={room.paused !== null} />
      <div className="desk-body">
        <Rail room={room} step={leaf ? null : step} leaf={leaf} onStep={lookAt} onLeaf={openLeaf} />
        <View room={room} />
      </div>
      <UndoBar />
      <Scenes room={room} />
      <TeamSeatDialog room={room} />
      <TeamNoteDialog room={room} />
    </div>
  );
}

function DeskHead({ room, step }: { readonly room: RoomState; readonly step: Step }) {
  const { desk } = useWholeWords();
  const { keysOn, lookAt, openLeaf } = useDesk();
  const { ask, refusal } = useAsk();
  const next = useNext(room, step);
  const toggleLook = () => void ask({ kind: 'look-here', on: !room.lookHere });
  const togglePause = () => void ask({ kind: 'pause', on: room.paused === null });
  const walk = (by: 1 | -1) => {
    const open = STEPS.filter((each) => reachable(each, room));
    const to = open[open.indexOf(step) + by];
    if (to) lookAt(to);
  };
  useKeys(
    {
      n: next.possible && !next.busy ? next.go : undefined,
      h: toggleLook,
      t: togglePause,
      o: () => openLeaf('paper'),
      c: () => openLeaf('picture'),
      s: () => void ask({ kind: 'show-standings', on: !room.standingsShown }),
      b: () => location.assign(boardPath(room.id, 'flip')),
      '[': () => walk(-1),
      ']': () => walk(1),
    },
    keysOn,
  );
  return (
    <header className="desk-head">
      <h1>{desk.title}</h1>
      <p className="desk-word">
        <span>{desk.room}</span> <strong>{room.word}</strong>
      </p>
      <Button
        look="quiet"
        icon={<Icon of={LogOut} />}
        aria-label={desk.closing.leave}
        title={desk.closing.leave}
        onClick={() => goToRoom(null)}
      />
      <span className="desk-head-space" />
      <DeviceSettingsButton shortcut="L" />
      <KeysHelp />
      <Button icon={<Icon of={Hand} />} shortcut="H" aria-pressed={room.lookHere} onClick={toggleLook}>
        {desk.lookHere}
      </Button>
      <Button
        icon={<Icon of={room.paused === null ? Pause : Play} />}
        shortcut="T"
        aria-pressed={room.paused !== null}
        className="desk-pause"
        aria-label={room.paused === null ? desk.pausing.pause : desk.pausing.goOn}
        onClick={togglePause}
      >
        <span className="desk-pause-word">
          {room.paused === null ? desk.pausing.pause : desk.pausing.goOn}
        </span>
      </Button>
      <BuildingTime room={room} />
      <Button look="primary" shortcut="N" disabled={!next.possible || next.busy} onClick={next.go}>
        {next.label}
      </Button>
      {(refusal ?? next.refusal) && (
        <div className="desk-head-refusal">
          <Refused refusal={refusal ?? next.refusal} />
        </div>
      )}
    </header>
  );
}

function StatusLine({ paused }: { readonly paused: boolean }) {
  const words = useWholeWords();
  const { desk } = words;
  const link = useLink();
  const status = useLinkState((state) => state.status);
  const waiting = useLinkState((state) => state.waiting);
  const lost = useLinkState((state) => state.lost);
  const [seenLost, setSeenLost] = useState(0);
  if (status.kind === 'quiet')
    return (
      <div className="desk-status" role="alert">
        {desk.status.quiet} <Button onClick={link.takeOver}>{desk.status.takeOver}</Button>
      </div>
    );
  if (status.kind === 'refused')
    return (
      <div className="desk-status" role="alert">
        {refusalSentence(words, status.refusal)}
        {waiting > 0 && <strong>{desk.status.waiting(waiting)}</strong>}
      </div>
    );
  if (status.kind === 'live' && lost > seenLost)
    return (
      <div className="desk-status" role="alert">
        {desk.status.lost(lost - seenLost)}{' '}
        <Button onClick={() => setSeenLost(lost)}>{desk.status.seenLoss}</Button>
      </div>
    );
  if (status.kind !== 'away')
    return paused ? (
      <div className="desk-status" role="status">
        {desk.pausing.on}
      </div>
    ) : null;
  return (
    <div className="desk-status" role="alert">
      {desk.status.away}
      {waiting > 0 && <strong>{desk.status.waiting(waiting)}</strong>}
    </div>
  );
}
