import { useState } from 'react';
import type { RoomState } from '../../shared/room/state.ts';
import { Button } from '../parts/button.tsx';
import { turnsOf } from '../parts/driving.ts';
import { teamOf } from '../parts/figures.ts';
import { Aside } from './aside.tsx';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';
import { lastBerth, useTeamNumbers } from './team-numbers.ts';
import { BesideTrials } from './trials/beside.tsx';
import { TrialPanel } from './trials/trial-panel.tsx';
import { type Picked, Turns } from './trials/turns.tsx';
import { useNoting } from './trials/use-noting.ts';
import { useWholeWords } from './whole-words.ts';
import './trials/trials.css';

const VIEWS = ['turns', 'beside'] as const;

/** Real robots on paper: whose turn it is, and what they do beside what was foretold. */
export function DriveStep({ room }: { readonly room: RoomState }) {
  const { driving } = useWholeWords();
  const keysOn = useDesk((state) => state.keysOn);
  const [view, setView] = useState<(typeof VIEWS)[number]>('turns');
  const [picked, setPicked] = useState<Picked | null>(null);
  /** When whose robot set off, by this page's clock. */
  const [watches, setWatches] = useState<Readonly<Record<string, number>>>({});
  const noting = useNoting(room);
  const pickNumber = (number: number) => {
    const team = room.teams.find((each) => each.berth === number);
    const now = turnsOf(room)[room.driving.turn]?.find((drive) => drive.team.id === team?.id);
    if (team) setPicked({ team: team.id, robot: now?.robot ?? team.berth });
  };
  useKeys({ ...useTeamNumbers(lastBerth(room), pickNumber) }, keysOn);
  const team = picked && teamOf(room, picked.team);
  const watch = (id: string, since: number | null) => {
    const { [id]: _, ...others } = watches;
    setWatches(since === null ? others : { ...others, [id]: since });
  };
  return (
    <div className="desk-two">
      <main className="desk-main trials">
        <header className="show-head">
          <h2>{driving.title}</h2>
          <span className="trials-views">
            {VIEWS.map((each) => (
              <Button key={each} aria-pressed={each === view} onClick={() => setView(each)}>
                {driving.views[each]}
              </Button>
            ))}
          </span>
        </header>
        {view === 'turns' ? (
          <Turns room={room} picked={picked} onPick={setPicked} noting={noting} />
        ) : (
          <BesideTrials room={room} />
        )}
      </main>
      <Aside label={driving.title}>
        {team ? (
          <TrialPanel
            key={`${team.id} ${picked.robot}`}
            room={room}
            team={team}
            robot={picked.robot}
            noting={noting}
            since={watches[team.id] ?? null}
            onWatch={(since) => watch(team.id, since)}
            onDone={() => {
              watch(team.id, null);
              setPicked(null);
            }}
          />
        ) : (
          <p className="desk-quiet">{driving.pick}</p>
        )}
      </Aside>
    </div>
  );
}
