import type { RoomState } from '../../shared/room/state.ts';
import { titleOfRule } from '../../shared/wording/rule-title.ts';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useDocument } from '../parts/use-document.ts';
import { Aside } from './aside.tsx';
import { ChallengeDetail } from './challenge-detail.tsx';
import { ClassWeather } from './conditions.tsx';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';
import { LateOnes } from './late.tsx';
import { needWords } from './team-card.tsx';
import { TeamDetail } from './team-detail.tsx';
import { TeamGrid } from './team-grid.tsx';
import { ClassHelp } from './team-learning.tsx';
import { lastBerth, useTeamNumbers } from './team-numbers.ts';
import { useWholeWords } from './whole-words.ts';
import './build.css';

/** While teams build: everybody at a glance, one team in full. */
export function BuildStep({ room }: { readonly room: RoomState }) {
  const { desk, emblems } = useWholeWords();
  const team = useDesk((state) => state.team);
  const byNeed = useDesk((state) => state.byNeed);
  const keysOn = useDesk((state) => state.keysOn);
  const pickTeam = useDesk((state) => state.pickTeam);
  const orderBy = useDesk((state) => state.orderBy);
  const loaded = useDocument('challenge', room.rounds.at(-1)?.challenge ?? null);
  const challenge = loaded.kind === 'here' ? loaded.value : null;
  const picked = room.teams.find((each) => each.id === team);
  const numbers = useTeamNumbers(lastBerth(room), (number) => {
    const numbered = room.teams.find((each) => each.berth === number);
    if (numbered) pickTeam(numbered.id);
  });
  useKeys(
    { ...numbers, g: () => orderBy(!byNeed), ...Object.fromEntries([['Escape', () => pickTeam(null)]]) },
    keysOn,
  );
  return (
    <div className="desk-two">
      <main className="desk-main">
        {loaded.kind === 'refused' && <Refused refusal={loaded.refusal} />}
        {room.teams.length === 0 && <p className="desk-quiet">{desk.building.noTeams}</p>}
        {challenge && room.teams.length > 0 && (
          <>
            <Needs room={room} />
            <LateOnes room={room} />
            <TeamGrid room={room} challenge={challenge} label={desk.building.title(room.teams.length)} />
            <Trips room={room} />
          </>
        )}
      </main>
      <Aside label={picked ? emblems.name(picked.emblem) : desk.building.thisChallenge}>
        {picked && challenge ? (
          <TeamDetail room={room} team={picked} challenge={challenge} />
        ) : (
          challenge && (
            <>
              <p className="desk-quiet build-select">{desk.building.select}</p>
              <ClassHelp room={room} />
              <ClassWeather room={room} challenge={challenge} />
              <ChallengeDetail challenge={challenge} title={desk.building.thisChallenge} />
            </>
          )
        )}
      </Aside>
    </div>
  );
}

/** More names than this stand without their reasons; the cards say them. */
const NEEDS_WITH_WORDS = 3;

/** Who may need somebody, with why; names come and go, also while the cards stand still. */
function Needs({ room }: { readonly room: RoomState }) {
  const words = useWholeWords();
  const { glances, pickTeam } = useDesk();
  const needing = room.teams.flatMap((team) => {
    const need = glances[team.id]?.need;
    return need ? [{ team, need }] : [];
  });
  return (
    <div className="needs">
      <h2>{words.desk.building.title(room.teams.length)}</h2>
      <Order />
      <div className="needs-who">
        <strong>{words.desk.building.mayNeed}</strong>
        {needing.length === 0 && <span className="desk-quiet">{words.desk.building.nobody}</span>}
        {needing.map(({ team, need }) => (
          <button key={team.id} type="button" className="need" onClick={() => pickTeam(team.id)}>
            <EmblemBadge emblem={team.emblem} size={18} />
            {needing.length <= NEEDS_WITH_WORDS && (
              <span className="desk-quiet">{needWords(need, words)}</span>
            )}
          </button>
        ))}
      </div>
    </div>
  );
}

/** Cards by who may need somebody, or by their berths. */
function Order() {
  const { building } = useWholeWords().desk;
  const { byNeed, orderBy } = useDesk();
  return (
    <label className="grid-order">
      {building.order}
      <select
        value={String(byNeed)}
        aria-keyshortcuts="G"
        onChange={(event) => orderBy(event.target.value === 'true')}
      >
        <option value="true">{building.byNeed}</option>
        <option value="false">{building.byBerth}</option>
      </select>
    </label>
  );
}

/** The findings that most drawings have in common. */
function Trips({ room }: { readonly room: RoomState }) {
  const words = useWholeWords();
  const { desk } = words;
  const glances = useDesk((state) => state.glances);
  const counts = new Map<string, number>();
  for (const team of room.teams) {
    const finding = glances[team.id]?.finding;
    if (!finding || finding.severity === 'untidy') continue;
    const title = titleOfRule(finding, words);
    counts.set(title, (counts.get(title) ?? 0) + 1);
  }
  const common = [...counts].filter(([, n]) => n > 1).sort((a, b) => b[1] - a[1]);
  if (common.length === 0) return null;
  return (
    <p className="trips">
      {desk.building.trips}:{' '}
      {common.map(([title, n]) => (
        <span key={title}>{desk.building.tripped(title, n)}</span>
      ))}
    </p>
  );
}
