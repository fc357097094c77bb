import { Check } from 'lucide-react';
import { useEffect, useId } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { textIn } from '../../shared/documents/values.ts';
import type { ReadyChallenge } from '../../shared/library/ready.ts';
import { isOfKit, type RoomState } from '../../shared/room/state.ts';
import { Icon } from '../parts/icon.tsx';
import { Miniature } from '../parts/miniature.tsx';
import { Notice } from '../parts/notice.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { useLocale } from '../parts/use-words.ts';
import { Aside } from './aside.tsx';
import { OwnActs } from './builder/own-acts.tsx';
import { OwnFoot, UnfinishedCard, useOwnChallenges } from './builder/own-cards.tsx';
import { ChallengeDetail } from './challenge-detail.tsx';
import { ClassWeather } from './conditions.tsx';
import { useDesk } from './desk-store.ts';
import { useReadyChallenges } from './kit/room-kit.ts';
import { Queue, QueueButton, useQueued } from './queue.tsx';
import { suggestedKey } from './steps.ts';
import { useWholeWords } from './whole-words.ts';
import './brief.css';

/** The ready challenges, and the one that is marked, in full. */
export function BriefStep({ room }: { readonly room: RoomState }) {
  const { desk } = useWholeWords();
  const { marked, mark } = useDesk();
  const locale = useLocale();
  const ready = useReadyChallenges(room);
  const own = useOwnChallenges(room.id);
  const challenges = [...ready, ...own.playable];
  const last = room.rounds.at(-1);
  // One that was chosen with another kit and that nobody has built is to be chosen again.
  const current = last && (room.building !== null || isOfKit(room, last)) ? last.key : null;
  const building = room.building !== null && !room.building.ended;
  const { next } = useQueued(room);
  const first = suggestedKey(
    room,
    challenges.flatMap(({ key, playable }) => (playable ? [key] : [])),
    next,
  );
  useEffect(() => {
    if (marked === null && first !== null) mark(first);
  }, [marked, first, mark]);
  const shown = challenges.find((each) => each.key === marked);
  const title = shown ? textIn(shown.title, locale) : desk.briefing.title;
  const isChosen = shown?.playable && shown.key === current && room.building === null;
  return (
    <div className="desk-two">
      <main className="desk-main">
        <h2 id="brief-title">{desk.briefing.title}</h2>
        {building && <Notice tone="caution">{desk.briefing.buildingStill}</Notice>}
        <Queue room={room} />
        <div className="brief-list" role="radiogroup" aria-labelledby="brief-title">
          {challenges.map((each) => (
            <ChallengeCard
              key={each.key}
              ready={each}
              marked={each.key === marked}
              state={each.key === current ? 'chosen' : played(room, each.key) ? 'played' : null}
              own={own.playable.includes(each)}
            />
          ))}
          {own.unfinished.map((challenge) => (
            <UnfinishedCard key={challenge.id} challenge={challenge} room={room.id} />
          ))}
        </div>
        <OwnFoot room={room} />
      </main>
      <Aside label={title} foot={isChosen && <BeforeBuilding room={room} challenge={shown.challenge} />}>
        {shown?.playable && (
          <>
            <QueueButton room={room} marked={shown.key} />
            <ChallengeDetail challenge={shown.challenge} title={title} />
            <OwnActs
              challenge={shown.challenge}
              title={shown.title}
              isOwn={own.playable.includes(shown)}
              room={room.id}
            />
          </>
        )}
      </Aside>
    </div>
  );
}

const played = (room: RoomState, key: string): boolean => room.rounds.some((round) => round.key === key);

interface CardProps {
  readonly ready: ReadyChallenge;
  readonly marked: boolean;
  readonly state: 'chosen' | 'played' | null;
  /** Made by this desk. */
  readonly own: boolean;
}

function ChallengeCard({ ready, marked, state, own }: CardProps) {
  const { desk, library, builder } = useWholeWords();
  const locale = useLocale();
  const mark = useDesk((desk) => desk.mark);
  if (!ready.playable)
    return (
      <div className="brief-card" data-playable="false">
        <span className="brief-card-words">
          <strong>{textIn(ready.title, locale)}</strong>
          <span className="desk-quiet">{library.standing(ready)}</span>
        </span>
      </div>
    );
  const { challenge } = ready;
  return (
    <label className="brief-card" data-marked={marked}>
      <input
        className="only-read-aloud"
        type="radio"
        name="challenge"
        checked={marked}
        onChange={() => mark(ready.key)}
      />
      <span className="brief-card-picture">
        <Miniature sheet={challenge.sheet} kit={challenge.kit} drawing={challenge.begin?.drawing} />
      </span>
      <span className="brief-card-words">
        <span className="brief-card-head">
          <strong>{textIn(ready.title, locale)}</strong>
          {state && (
            <span className="brief-state">
              <Icon of={Check} size={16} />
              {desk.briefing[state]}
            </span>
          )}
        </span>
        <span>{textIn(challenge.sentence, locale)}</span>
        <span className="desk-quiet">
          {own ? builder.own.yours : desk.briefing.topic(ready.topic)} · {desk.briefing.play(challenge.play)}
        </span>
        {ready.par === 'not-known' && <span className="desk-quiet">{library.standing(ready)}</span>}
      </span>
    </label>
  );
}

/** How long teams shall build, in which weather, and whether each on a sheet of its own. */
function BeforeBuilding({ room, challenge }: { readonly room: RoomState; readonly challenge: Challenge }) {
  return (
    <>
      <TimeChoice />
      <div className="brief-weather">
        <ClassWeather room={room} challenge={challenge} />
      </div>
      <SheetChoice room={room} />
    </>
  );
}

function SheetChoice({ room }: { readonly room: RoomState }) {
  const { desk } = useWholeWords();
  const { ask, refusal, busy } = useAsk();
  const on = room.variedSheets;
  return (
    <>
      <label className="brief-varied">
        <input
          type="checkbox"
          checked={on}
          disabled={busy}
          onChange={() => void ask({ kind: 'vary-sheets', on: !on })}
        />
        <span>
          {desk.briefing.varied}
          <span className="desk-quiet">{desk.briefing.variedNote}</span>
        </span>
      </label>
      <Refused refusal={refusal} />
    </>
  );
}

const TIMES = [null, 5, 8, 10, 15, 20] as const;

function TimeChoice() {
  const { desk } = useWholeWords();
  const { minutes, setMinutes } = useDesk();
  const name = useId();
  return (
    <fieldset className="brief-time">
      <legend>{desk.briefing.time}</legend>
      <div className="brief-times">
        {TIMES.map((each) => (
          <label key={each} className="brief-minutes" data-on={each === minutes}>
            <input
              className="only-read-aloud"
              type="radio"
              name={name}
              checked={each === minutes}
              onChange={() => setMinutes(each)}
            />
            {each === null ? desk.briefing.noLimit : desk.briefing.minutes(each)}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
