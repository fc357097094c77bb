import { useEffect, useMemo } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { checkChallenge } from '../../../shared/judge/check-challenge.ts';
import type { ReadyChallenge } from '../../../shared/library/ready.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { NEW_CHALLENGE } from '../../../shared/wording/fresh.ts';
import { Refused } from '../../parts/refusal.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useRoomKit } from '../kit/room-kit.ts';
import { useWholeWords } from '../whole-words.ts';
import { MakeOwn, OwnActs } from './own-acts.tsx';
import { loadOwn, useOwn } from './own-challenges.ts';

export interface OwnInRoom {
  /** Can be chosen like ready ones. */
  readonly playable: readonly ReadyChallenge[];
  readonly unfinished: readonly Challenge[];
}

/** The challenges of the desk whose room it is, as the list of ready ones has them. */
export function useOwnChallenges(room: string): OwnInRoom {
  const list = useOwn((state) => state.list);
  useEffect(() => void loadOwn(room), [room]);
  return useMemo(() => {
    const playable: ReadyChallenge[] = [];
    const unfinished: Challenge[] = [];
    for (const challenge of list ?? []) {
      if (checkChallenge(challenge).length > 0) unfinished.push(challenge);
      else playable.push(asReady(challenge));
    }
    return { playable, unfinished };
  }, [list]);
}

function asReady(challenge: Challenge): ReadyChallenge {
  const { id, topic, title = NEW_CHALLENGE.title } = challenge;
  const said = { en: title.en, es: textIn(title, 'es') };
  return { key: id, topic, title: said, playable: true, challenge, par: 'known' };
}

/** One that can't be played yet. */
export function UnfinishedCard({
  challenge,
  room,
}: {
  readonly challenge: Challenge;
  readonly room: string;
}) {
  const { own } = useWholeWords().builder;
  const title = challenge.title ?? NEW_CHALLENGE.title;
  return (
    <div className="brief-card" data-playable="false">
      <span className="brief-card-words">
        <strong>{textIn(title, useLocale())}</strong>
        <span className="desk-quiet">{own.notReady}</span>
        <OwnActs challenge={challenge} title={title} isOwn room={room} />
      </span>
    </div>
  );
}

/** Under the list: making one, and what went wrong with the list. */
export function OwnFoot({ room }: { readonly room: RoomState }) {
  const { own } = useWholeWords().builder;
  const kit = useRoomKit(room);
  const { list, refusal } = useOwn();
  return (
    <section className="own-foot" aria-label={own.title}>
      <h3>{own.title}</h3>
      <p className="desk-quiet">{list?.length === 0 ? own.none : own.note}</p>
      <Refused refusal={refusal} />
      {kit && <MakeOwn room={room.id} kit={kit} />}
    </section>
  );
}
