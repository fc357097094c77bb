import { Trash2 } from 'lucide-react';
import type { ReactNode } from 'react';
import { useState } from 'react';
import type { LinkInList, RoomInList } from '../../../shared/wire/desks.ts';
import type { WireRefusal } from '../../../shared/wire/protocol.ts';
import { Button } from '../../parts/button.tsx';
import { useDates } from '../../parts/dates.ts';
import { Icon } from '../../parts/icon.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { forgetDesk } from '../session.ts';
import { useWholeWords } from '../whole-words.ts';
import { Sure } from './sure.tsx';
import { type Erasing, useErasing } from './use-erasing.ts';
import { type Kept, type Made, useKept } from './use-kept.ts';
import './before.css';
import './kept.css';

/** The one place that says what is kept and until when, and from which all of it can be erased. */
export function WhatIsKept() {
  const { kept: words } = useWholeWords();
  const { kept, refusal, load } = useKept();
  const erasing = useErasing(load);
  return (
    <section className="before kept" aria-labelledby="kept-title">
      <h2 id="kept-title">{words.title}</h2>
      <p>{words.first}</p>
      {kept === null && refusal === null && <p className="desk-quiet">{words.loading} …</p>}
      <Refused refusal={refusal ?? erasing.refusal} />
      {kept && (
        <>
          <Rooms rooms={kept.rooms} erasing={erasing} />
          <Links links={kept.links} erasing={erasing} />
          <MadeHere made={kept.made} erasing={erasing} />
          <Here here={kept.here} erasing={erasing} />
          <Elsewhere />
          <Everything kept={kept} erasing={erasing} />
        </>
      )}
    </section>
  );
}

function Part({ title, what, children }: { title: string; what?: string; children: ReactNode }) {
  return (
    <section>
      <h3>{title}</h3>
      {what !== undefined && <p className="desk-quiet">{what}</p>}
      {children}
    </section>
  );
}

interface RowProps {
  readonly said: string;
  readonly until: string;
  /** Absent: this desk may not. */
  readonly act?: { readonly word: string; readonly of: string; readonly go: () => void } | undefined;
}

const Row = ({ said, until, act }: RowProps) => (
  <li>
    <span>
      {said}, {until}
    </span>
    {act && (
      <Button icon={<Icon of={Trash2} size={18} />} aria-label={act.of} onClick={act.go}>
        {act.word}
      </Button>
    )}
  </li>
);

interface RoomsProps {
  readonly rooms: readonly RoomInList[];
  readonly erasing: Erasing;
}

function Rooms({ rooms, erasing }: RoomsProps) {
  const { kept: words } = useWholeWords();
  const dates = useDates();
  return (
    <Part title={words.rooms} what={words.roomsWhat}>
      {rooms.length === 0 && <p>{words.roomsNone}</p>}
      <ul className="kept-list">
        {rooms.map((room) => (
          <Row
            key={room.room}
            said={words.room(room.word, dates.day(room.openedAt))}
            until={room.erasedOn === null ? words.untilErased : words.until(dates.day(room.erasedOn))}
            act={
              room.managed
                ? {
                    word: words.erase,
                    of: words.eraseRoom(room.word),
                    go: () => void erasing.rooms([room]),
                  }
                : undefined
            }
          />
        ))}
      </ul>
    </Part>
  );
}

interface LinksProps {
  readonly links: readonly LinkInList[];
  readonly erasing: Erasing;
}

function Links({ links, erasing }: LinksProps) {
  const { kept: words } = useWholeWords();
  const dates = useDates();
  return (
    <Part title={words.links} what={words.linksWhat}>
      {links.length === 0 && <p>{words.linksNone}</p>}
      <ul className="kept-list">
        {links.map((link) => (
          <Row
            key={link.id}
            said={(link.kind === 'desk' ? words.deskLink : words.roomLink)(link.word, dates.day(link.madeAt))}
            until={words.untilErased}
            act={{
              word: words.revoke,
              of: words.revokeLink(link.word),
              go: () => void erasing.links([link]),
            }}
          />
        ))}
      </ul>
    </Part>
  );
}

function MadeHere({ made, erasing }: { readonly made: readonly Made[]; readonly erasing: Erasing }) {
  const { kept: words } = useWholeWords();
  const dates = useDates();
  return (
    <Part title={words.made}>
      {made.length === 0 && <p>{words.madeNone}</p>}
      <ul className="kept-list">
        {made.map((one) => (
          <Row
            key={`${one.shelf} ${one.id}`}
            said={words[one.shelf](one.name, dates.day(one.savedAt))}
            until={words.untilErased}
            act={{ word: words.erase, of: words.eraseMade(one.name), go: () => void erasing.made([one]) }}
          />
        ))}
      </ul>
    </Part>
  );
}

function Here({ here, erasing }: { readonly here: Kept['here']; readonly erasing: Erasing }) {
  const { kept: words } = useWholeWords();
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const forget = async () => {
    const answer = await forgetDesk();
    if (answer.ok) location.assign('/desk');
    else setRefusal(answer.refusal);
  };
  return (
    <Part title={words.here}>
      {here.length === 0 && <p>{words.hereNone}</p>}
      <ul className="kept-list">
        {here.map((thing) => (
          <Row key={thing} said={words.hereThing(thing)} until={words.untilErased} />
        ))}
        <li>{words.cookie}</li>
      </ul>
      {here.length > 0 && (
        <Button icon={<Icon of={Trash2} size={18} />} onClick={erasing.here}>
          {words.eraseHere}
        </Button>
      )}
      <Sure
        ask={words.forget}
        note={words.forgetNote}
        yes={words.forgetSure}
        no={words.forgetNot}
        onYes={() => void forget()}
      />
      <Refused refusal={refusal} />
    </Part>
  );
}

function Elsewhere() {
  const { kept: words } = useWholeWords();
  return (
    <Part title={words.elsewhere}>
      <ul className="before-cautions">
        {words.elsewhereLines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </Part>
  );
}

function Everything({ kept, erasing }: { readonly kept: Kept; readonly erasing: Erasing }) {
  const { kept: words } = useWholeWords();
  const rooms = kept.rooms.filter(({ managed }) => managed);
  return (
    <Part title={words.all}>
      <Sure
        ask={words.all}
        note={words.allNote(rooms.length, kept.links.length, kept.made.length)}
        yes={words.allSure}
        no={words.allNot}
        onYes={() => void erasing.all(kept)}
      />
    </Part>
  );
}
