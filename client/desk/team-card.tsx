import { TriangleAlert } from 'lucide-react';
import { type KeyboardEvent, memo, useEffect } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { pointsSoFar } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { useJudged } from '../parts/judging.ts';
import { Miniature } from '../parts/miniature.tsx';
import { useTeamDrawing } from '../parts/use-drawings.ts';
import { useLinkState } from '../parts/use-link.tsx';
import { useServerTime } from '../parts/use-server-time.ts';
import { useDesk } from './desk-store.ts';
import { type Glance, glanceAt, type Need, titleOfRule } from './insight.ts';
import { Places } from './places.tsx';
import { useWholeWords } from './whole-words.ts';

export interface TeamCardProps {
  readonly room: RoomState;
  readonly team: Team;
  readonly challenge: Challenge;
  readonly picked: boolean;
  /** In the tab order: one card of the grid is. */
  readonly inTabOrder: boolean;
  /** For the arrows from card to card. */
  readonly onKey: (event: KeyboardEvent) => void;
}

/** How often "nothing drawn yet" is looked at, ms. */
const LOOK_EVERY = 15_000;

/** One team, live: its drawing, its word, what may be needed. */
export const TeamCard = memo(function TeamCard(props: TeamCardProps) {
  const { room, team, challenge, picked, inTabOrder, onKey } = props;
  const { desk } = useWholeWords();
  const pickTeam = useDesk((state) => state.pickTeam);
  const drawing = useTeamDrawing(room, team.id, challenge.play);
  const judged = useJudged(challenge, drawing?.design ?? null, 'idle');
  const doing = useLinkState((state) => state.doings[team.id]);
  const now = useServerTime(LOOK_EVERY);
  const glance = glanceAt({
    room,
    team: team.id,
    design: drawing?.design ?? null,
    verdict: judged?.verdict ?? null,
    doing,
    challenge,
    now,
  });
  useReported(team.id, glance);
  const points = pointsSoFar(room, team.id);
  return (
    <button
      type="button"
      className="team-card"
      aria-pressed={picked}
      tabIndex={inTabOrder ? 0 : -1}
      data-team={team.id}
      onClick={() => pickTeam(team.id)}
      onKeyDown={onKey}
    >
      <span className="team-card-head">
        <EmblemBadge emblem={team.emblem} size={20} />
        {points !== null && <span className="desk-quiet">{desk.building.points(points)}</span>}
      </span>
      <span className="team-card-picture">
        <Miniature
          sheet={challenge.sheet}
          kit={challenge.kit}
          drawing={drawing?.design.drawing ?? challenge.begin?.drawing}
        />
        {judged && <Places sheet={challenge.sheet} findings={judged.verdict.findings} />}
      </span>
      <span className="team-card-foot">
        <span className="team-word">
          <span>{doing ? desk.building.doing(doing) : desk.building.nothingYet}</span>
          {glance.last && <span>{desk.building.entry(glance.last.number)}</span>}
        </span>
        {glance.need && <NeedWord need={glance.need} />}
      </span>
    </button>
  );
});

function NeedWord({ need }: { readonly need: Need }) {
  const words = useWholeWords();
  return (
    <span className="team-need" data-need={need.kind}>
      <Icon of={TriangleAlert} size={16} />
      {needWords(need, words)}
    </span>
  );
}

/** A few words for why a team may need somebody. */
export function needWords(need: Need, words: Wording): string {
  const { desk, findings } = words;
  switch (need.kind) {
    case 'same':
      return desk.building.need.same(need.tries, titleOfRule(need.finding, words));
    case 'tries':
      return desk.building.need.tries(need.tries);
    case 'stops':
      return findings.said(need.finding).title;
    case 'stuck':
      return desk.building.need.stuck(need.entries);
    case 'empty':
      return desk.building.need.empty;
    case 'away':
      return desk.building.need.away;
  }
}

/** Tells the lines around the grid what this card knows. */
function useReported(team: string, glance: Glance): void {
  const report = useDesk((state) => state.report);
  useEffect(() => report(team, glance), [team, glance, report]);
}
