import { TriangleAlert } from 'lucide-react';
import { type KeyboardEvent, memo, useEffect, useRef } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design, Drawing } from '../../shared/documents/design.ts';
import type { Finding } from '../../shared/documents/verdict.ts';
import type { RoomState, Team, TeamId } from '../../shared/room/state.ts';
import { titleOfRule } from '../../shared/wording/rule-title.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import { pointsSoFar } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { useFindings } from '../parts/judging.ts';
import { Miniature } from '../parts/miniature.tsx';
import { useTeamDrawing } from '../parts/use-drawings.ts';
import { useLinkState } from '../parts/use-link.tsx';
import { useServerTime } from '../parts/use-server-time.ts';
import { useDesk } from './desk-store.ts';
import { type Glance, glanceAt, type Need } from './insight.ts';
import { Places } from './places.tsx';
import { useInView } from './use-in-view.ts';
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
  const drawing = useTeamDrawing(room, team, challenge);
  const findings = useLastFindings(challenge, drawing?.design ?? null, team.id);
  const doing = useLinkState((state) => state.doings[team.id]);
  const now = useServerTime(LOOK_EVERY);
  const glance = glanceAt({
    room,
    team: team.id,
    design: drawing?.design ?? null,
    findings,
    doing,
    challenge,
    now,
  });
  useReported(team.id, glance);
  const card = useRef<HTMLButtonElement>(null);
  const inView = useInView(card);
  const points = pointsSoFar(room, team.id);
  return (
    <button
      type="button"
      ref={card}
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
      <CardPicture
        challenge={challenge}
        drawing={drawing?.design.drawing ?? challenge.begin?.drawing}
        findings={findings}
        inView={inView}
      />
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

/** Until the newest drawing has been looked at, what was found in the one before: words and order don't flicker. */
function useLastFindings(
  challenge: Challenge,
  design: Design | null,
  team: TeamId,
): readonly Finding[] | null {
  const findings = useFindings(challenge, design, team);
  const last = useRef({ challenge, findings });
  if (findings || !design || last.current.challenge !== challenge) last.current = { challenge, findings };
  return last.current.findings;
}

interface CardPictureProps {
  readonly challenge: Challenge;
  readonly drawing: Drawing | undefined;
  readonly findings: readonly Finding[] | null;
  readonly inView: boolean;
}

/** A drawing with rings where something is wrong. Out of view it stays as it was when it was last seen. */
const CardPicture = memo(
  function CardPicture({ challenge: { sheet, kit }, drawing, findings }: CardPictureProps) {
    return (
      <span className="team-card-picture">
        <Miniature sheet={sheet} kit={kit} drawing={drawing} />
        {findings && <Places sheet={sheet} findings={findings} />}
      </span>
    );
  },
  (before, now) =>
    !now.inView ||
    (before.challenge === now.challenge &&
      before.drawing === now.drawing &&
      before.findings === now.findings),
);

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
