import { ArrowUp, TabletSmartphone } from 'lucide-react';
import { type ReactNode, useEffect, useRef } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import type { Verdict } from '../../shared/documents/verdict.ts';
import { weatherOf } from '../../shared/library/conditions.ts';
import type { Entry, RoomState, Team } from '../../shared/room/state.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { AnswerRows } from '../parts/answer-rows.tsx';
import { Button } from '../parts/button.tsx';
import { useDates } from '../parts/dates.ts';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { entriesOf, pointsSoFar } from '../parts/figures.ts';
import { GoalRows } from '../parts/goal-rows.tsx';
import { gravest } from '../parts/gravest.ts';
import { Icon } from '../parts/icon.tsx';
import type { WaysOfGoals } from '../parts/judge-here.ts';
import { useJudged, useWays } from '../parts/judging.ts';
import { Miniature } from '../parts/miniature.tsx';
import { Refused } from '../parts/refusal.tsx';
import { hereOf, useDocument } from '../parts/use-document.ts';
import { useTeamAnswers, useTeamDrawing } from '../parts/use-drawings.ts';
import { onSheetOf, onTeamsSheet } from '../parts/variants.ts';
import { TeamConditions } from './conditions.tsx';
import { useDesk } from './desk-store.ts';
import { EntryActs } from './entry-acts.tsx';
import { Places } from './places.tsx';
import { TeamCoaching } from './team-coaching.tsx';
import { TeamLearning } from './team-learning.tsx';
import { useWholeWords } from './whole-words.ts';
import './team-detail.css';

export interface TeamDetailProps {
  readonly room: RoomState;
  readonly team: Team;
  /** As it was chosen; what the team has of it is found here. */
  readonly challenge: Challenge;
}

/** One team in full: its drawing now or one of its entries, and why that scores what it scores. */
export function TeamDetail({ room, team, challenge }: TeamDetailProps) {
  const { desk } = useWholeWords();
  const { entry: picked, openSeat } = useDesk();
  const entries = entriesOf(room, team.id);
  const entry = entries.find((each) => each.id === picked);
  const points = pointsSoFar(room, team.id);
  const section = useBrought(team);
  const own = onTeamsSheet(room, team, challenge);
  return (
    <section className="team-detail" ref={section}>
      <AllTeams />
      <header className="team-detail-head">
        <h2>
          <EmblemBadge emblem={team.emblem} size={24} />
        </h2>
        <span className="desk-quiet">{points === null ? null : desk.team.points(points)}</span>
        <Button
          look="quiet"
          icon={<Icon of={TabletSmartphone} />}
          aria-label={desk.seats.open}
          title={desk.seats.open}
          onClick={() => openSeat(team.id)}
        />
      </header>
      <TeamLearning room={room} team={team} />
      <TeamConditions room={room} team={team} challenge={challenge} />
      <TeamCoaching room={room} team={team} />
      <EntryTabs team={team} entries={entries} entry={entry} />
      {entry ? (
        <EntryView room={room} entry={entry} challenge={challenge} />
      ) : challenge.play === 'predict' ? (
        <AnswersView room={room} team={team} challenge={own} />
      ) : (
        <DraftView room={room} team={team} challenge={own} />
      )}
    </section>
  );
}

/** Brings a team that is chosen into view where it lies under the others, as it does on a phone. */
function useBrought({ id }: Team) {
  const section = useRef<HTMLElement>(null);
  useEffect(() => {
    const chosen = section.current;
    if (id && chosen && chosen.getBoundingClientRect().top > window.innerHeight) chosen.scrollIntoView();
  }, [id]);
  return section;
}

/** On a phone the way back up. */
function AllTeams() {
  const { desk } = useWholeWords();
  const pickTeam = useDesk((state) => state.pickTeam);
  const back = () => {
    pickTeam(null);
    document.querySelector('.team-grid')?.scrollIntoView();
  };
  return (
    <Button look="quiet" className="team-back" icon={<Icon of={ArrowUp} />} onClick={back}>
      {desk.team.back}
    </Button>
  );
}

interface TabsProps {
  readonly team: Team;
  readonly entries: readonly Entry[];
  readonly entry: Entry | undefined;
}

function EntryTabs({ team, entries, entry }: TabsProps) {
  const { desk } = useWholeWords();
  const pickTeam = useDesk((state) => state.pickTeam);
  if (entries.length === 0) return <p className="desk-quiet">{desk.team.noEntries}</p>;
  return (
    <div className="entry-tabs">
      <button type="button" aria-pressed={!entry} onClick={() => pickTeam(team.id)}>
        {desk.team.now}
      </button>
      {entries.map((each) => (
        <button
          key={each.id}
          type="button"
          aria-pressed={each === entry}
          onClick={() => pickTeam(team.id, each.id)}
        >
          {desk.team.entry(each.number)} · {each.verdict?.points ?? '…'}
        </button>
      ))}
    </div>
  );
}

function AnswersView({ room, team, challenge }: TeamDetailProps) {
  const { desk } = useWholeWords();
  const answers = useTeamAnswers(room, team.id);
  return (
    <>
      <BigPicture challenge={challenge} design={null} verdict={null} />
      {answers ? (
        <AnswerRows challenge={challenge} answers={answers} />
      ) : (
        <p className="desk-quiet">{desk.building.nothingAnswered}</p>
      )}
    </>
  );
}

function DraftView({ room, team, challenge }: TeamDetailProps) {
  const { desk } = useWholeWords();
  const drawing = useTeamDrawing(room, team, challenge);
  const judged = useJudged(challenge, drawing?.design ?? null);
  return (
    <>
      <BigPicture challenge={challenge} design={drawing?.design ?? null} verdict={judged?.verdict ?? null} />
      {!drawing && <p className="desk-quiet">{desk.building.nothingYet}</p>}
      {drawing && !judged && <p className="desk-quiet">{desk.team.checking} …</p>}
      {judged && (
        <VerdictView challenge={challenge} verdict={judged.verdict} ways={judged.ways} withPoints={false} />
      )}
    </>
  );
}

interface EntryViewProps {
  readonly room: RoomState;
  readonly entry: Entry;
  readonly challenge: Challenge;
}

function EntryView({ room, entry, challenge: chosen }: EntryViewProps) {
  const { desk, learning } = useWholeWords();
  const when = useDates().time(entry.at);
  const challenge = onSheetOf(entry, chosen);
  const weather = weatherOf(challenge);
  const line = (
    <div className="entry-line">
      <span>
        {when}
        {entry.late && !entry.returned && `, ${entry.taken ? desk.late.counts : desk.late.notYet}`}
        {entry.mended && `, ${learning.mended}`}
        {entry.gentler && `, ${desk.coaching.inGentler}`}
        {weather !== weatherOf(chosen) && `, ${desk.conditions.judgedIn(weather)}`}
        {entry.returned && `, ${desk.coaching.returned}`}
        {', '}
        <strong>{outcomeOf(entry, desk.team)}</strong>
      </span>
      <EntryActs room={room} entry={entry} />
    </div>
  );
  if (challenge.play === 'predict')
    return (
      <>
        <BigPicture challenge={challenge} design={null} verdict={null} />
        {line}
        <PredictedWhy entry={entry} challenge={challenge} />
      </>
    );
  return <DrawnEntry entry={entry} challenge={challenge} line={line} />;
}

interface EntryProps {
  readonly entry: Entry;
  readonly challenge: Challenge;
}

/** What a team predicted, and which answers are right. */
export function PredictedWhy({ entry, challenge }: EntryProps) {
  const answers = hereOf(useDocument('answers', entry.design));
  const verdict = hereOf(useDocument('answers-verdict', entry.verdict?.document ?? null));
  return answers && <AnswerRows challenge={challenge} answers={answers} verdict={verdict ?? undefined} />;
}

function DrawnEntry({ entry, challenge, line }: EntryProps & { readonly line: ReactNode }) {
  const design = useDocument('design', entry.design);
  const verdict = useDocument('verdict', entry.verdict?.document ?? null);
  const ways = useWays(challenge, design, verdict);
  return (
    <>
      <BigPicture challenge={challenge} design={hereOf(design)} verdict={hereOf(verdict)} />
      {line}
      {verdict.kind === 'refused' && <Refused refusal={verdict.refusal} />}
      {verdict.kind === 'here' && (
        <VerdictView challenge={challenge} verdict={verdict.value} ways={ways} withPoints />
      )}
    </>
  );
}

const outcomeOf = (entry: Entry, words: Wording['desk']['team']) =>
  entry.verdict ? words.points(entry.verdict.points) : entry.unjudged ? words.unjudged : words.judging;

interface BigPictureProps {
  readonly challenge: Challenge;
  readonly design: Design | null;
  readonly verdict: Verdict | null;
}

function BigPicture({ challenge, design, verdict }: BigPictureProps) {
  return (
    <div className="big-picture desk-sheet">
      <Miniature
        sheet={challenge.sheet}
        kit={challenge.kit}
        drawing={design?.drawing ?? challenge.begin?.drawing}
      />
      {verdict && <Places sheet={challenge.sheet} findings={verdict.findings} />}
    </div>
  );
}

interface VerdictViewProps {
  readonly challenge: Challenge;
  readonly verdict: Verdict;
  readonly ways: WaysOfGoals | undefined;
  readonly withPoints: boolean;
}

/** Goals with margins, what the robot does, what the drawing rules say. */
export function VerdictView({ challenge, verdict, ways, withPoints }: VerdictViewProps) {
  const { desk, findings, actions, numbers } = useWholeWords();
  const runs = verdict.runs.map((run) => `${actions.ending(run.ending)} (${numbers.time(run.duration)})`);
  const found = gravest(verdict.findings);
  return (
    <div className="verdict">
      <h3>{withPoints ? desk.team.why : desk.team.goals}</h3>
      <GoalRows
        challenge={challenge}
        results={verdict.goals}
        ways={ways}
        points={withPoints ? verdict.points : undefined}
      />
      {runs.length > 0 && (
        <>
          <h3>{desk.team.happens}</h3>
          <p>{numbers.capital(numbers.list([...new Set(runs)], 'or'))}.</p>
        </>
      )}
      <h3>{desk.team.findings}</h3>
      {found.length === 0 && <p className="desk-quiet">{desk.team.noFindings}</p>}
      <ul className="verdict-findings">
        {found.map((finding) => (
          <li key={finding.id} data-severity={finding.severity}>
            {findings.said(finding).sentence} <span className="desk-quiet">{findings.remedy(finding)}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
