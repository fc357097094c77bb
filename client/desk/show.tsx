import { Columns2, ListOrdered } from 'lucide-react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Entry, EntryId, RoomState, Team } from '../../shared/room/state.ts';
import { Button } from '../parts/button.tsx';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { bestEntry, entriesOf, entryOf, isHeat } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { useWays } from '../parts/judging.ts';
import { Refused } from '../parts/refusal.tsx';
import { RESTING } from '../parts/stage-clock.ts';
import { type Asking, useAsk } from '../parts/use-ask.ts';
import { useDocument } from '../parts/use-document.ts';
import { useLink } from '../parts/use-link.tsx';
import { onSheetOf } from '../parts/variants.ts';
import { Aside } from './aside.tsx';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';
import { LateOnes } from './late.tsx';
import { StagePanel } from './stage-panel.tsx';
import { PredictedWhy, VerdictView } from './team-detail.tsx';
import { lastBerth, useTeamNumbers } from './team-numbers.ts';
import { useWholeWords } from './whole-words.ts';
import './show.css';

/** Drawings on the board's stage: the best of each team one key away, any entry two clicks. */
export function ShowStep({ room }: { readonly room: RoomState }) {
  const { desk } = useWholeWords();
  const keysOn = useDesk((state) => state.keysOn);
  const stage = useStaging(room);
  const withBest = (put: (entry: EntryId) => void) => (number: number) => {
    const team = room.teams.find((each) => each.berth === number);
    const best = team && bestEntry(room, team.id);
    if (best) put(best.id);
  };
  const numbers = useTeamNumbers(lastBerth(room), withBest(stage.alone), withBest(stage.beside));
  const clear = () => void stage.ask({ kind: 'stage', entries: [] });
  useKeys({ ...numbers, x: room.stage.length > 0 ? clear : undefined }, keysOn);
  return (
    <div className="desk-two">
      <main className="desk-main show">
        <header className="show-head">
          <h2>{desk.showing.title}</h2>
          <Button
            icon={<Icon of={ListOrdered} />}
            shortcut="S"
            aria-pressed={room.standingsShown}
            onClick={() => void stage.ask({ kind: 'show-standings', on: !room.standingsShown })}
          >
            {desk.showing.standings}
          </Button>
          {room.standingsShown && isHeat(room) && <p className="desk-quiet">{desk.showing.standingsWait}</p>}
        </header>
        <Refused refusal={stage.refusal} />
        <LateOnes room={room} />
        <StagePanel room={room} />
      </main>
      <Aside label={desk.showing.best}>
        <h2 className="show-teams-title">{desk.showing.best}</h2>
        <ul className="show-teams">
          {room.teams.map((team) => (
            <TeamRow key={team.id} room={room} team={team} place={team.berth} stage={stage} />
          ))}
        </ul>
        <StageWhy room={room} />
      </Aside>
    </div>
  );
}

interface Staging extends Asking {
  /** Shows one entry alone. */
  readonly alone: (entry: EntryId) => void;
  /** Puts another one beside those that are shown, or takes it away from them. */
  readonly beside: (entry: EntryId) => void;
}

/** Puts entries on the stage; the clock of a new stage stands at its beginning. */
function useStaging(room: RoomState): Staging {
  const link = useLink();
  const asking = useAsk();
  const put = async (entries: readonly EntryId[]) => {
    if (await asking.ask({ kind: 'stage', entries })) link.tell({ kind: 'stage-clock', clock: RESTING });
  };
  return {
    ...asking,
    alone: (entry) => void put([entry]),
    beside: (entry) => {
      const others = room.stage.filter((each) => each !== entry);
      const takenAway = others.length > 0 && others.length < room.stage.length;
      void put(takenAway ? others : [...others, entry]);
    },
  };
}

interface TeamRowProps {
  readonly room: RoomState;
  readonly team: Team;
  readonly place: number;
  readonly stage: Staging;
}

function TeamRow({ room, team, place, stage }: TeamRowProps) {
  const { desk, emblems } = useWholeWords();
  const best = bestEntry(room, team.id);
  const others = entriesOf(room, team.id).filter((entry) => entry !== best && entry.verdict !== null);
  const name = emblems.name(team.emblem);
  return (
    <li className="show-team" data-on={best !== undefined && room.stage.includes(best.id)}>
      <button
        type="button"
        className="show-best"
        disabled={!best}
        onClick={() => best && stage.alone(best.id)}
        aria-label={best ? desk.showing.entry(name, best.number) : `${name}, ${desk.showing.noEntry}`}
      >
        <kbd>{place}</kbd>
        <EmblemBadge emblem={team.emblem} />
        <span className="show-points">
          {best ? desk.building.points(best.verdict?.points ?? 0) : desk.showing.noEntry}
        </span>
      </button>
      {best && room.stage.length > 0 && !room.stage.includes(best.id) && (
        <Button
          look="quiet"
          icon={<Icon of={Columns2} />}
          aria-label={desk.showing.heatWith(name)}
          title={desk.showing.heatWith(name)}
          onClick={() => stage.beside(best.id)}
        />
      )}
      {others.length > 0 && (
        <span className="show-others">
          {others.map((entry) => (
            <button
              key={entry.id}
              type="button"
              aria-pressed={room.stage.includes(entry.id)}
              aria-label={desk.showing.entry(name, entry.number)}
              onClick={() => stage.alone(entry.id)}
            >
              {entry.number} · {entry.verdict?.points}
            </button>
          ))}
        </span>
      )}
    </li>
  );
}

/** Why the entry on the stage scores what it scores. In a heat the board shows them all. */
function StageWhy({ room }: { readonly room: RoomState }) {
  const entry = room.stage.length === 1 ? entryOf(room, room.stage[0]!) : undefined;
  const challenge = useDocument('challenge', entry ? (room.rounds[entry.round]?.challenge ?? null) : null);
  if (!entry || challenge.kind !== 'here') return null;
  const played = onSheetOf(entry, challenge.value);
  const Why = played.play === 'predict' ? PredictedWhy : DrawnWhy;
  return (
    <div className="show-why">
      <Why entry={entry} challenge={played} />
    </div>
  );
}

interface WhyProps {
  readonly entry: Entry;
  readonly challenge: Challenge;
}

function DrawnWhy({ entry, challenge }: WhyProps) {
  const verdict = useDocument('verdict', entry.verdict?.document ?? null);
  const design = useDocument('design', entry.design);
  const ways = useWays(challenge, design, verdict);
  if (verdict.kind !== 'here') return null;
  return <VerdictView challenge={challenge} verdict={verdict.value} ways={ways} withPoints />;
}
