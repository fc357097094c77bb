import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { DrawingSurface } from '../../editor/surface/drawing-surface.tsx';
import type { DrawingSession } from '../../editor/surface/session.ts';
import { useLocale, useWords } from '../../parts/use-words.ts';
import { OpenFinding } from './open-finding.tsx';
import type { Findings } from './use-findings.ts';
import type { LiveVerdict } from './use-live-verdict.ts';

export interface SurfaceProps {
  readonly challenge: Challenge;
  readonly session: DrawingSession;
  readonly live: LiveVerdict;
  readonly findings: Findings;
  readonly resting: boolean;
  /** Takes over a drawing in which the engine has mended something. */
  readonly onMend: (mended: Design) => void;
  /** What letters do on the paper, beside drawing. */
  readonly keys: Readonly<Record<string, () => void>>;
}

/** The paper of a team, with what the engine found in the drawing. */
export function Surface({ challenge, session, live, findings, resting, onMend, keys }: SurfaceProps) {
  const words = useWords().tablet.building;
  return (
    <DrawingSurface
      session={session}
      label={words.sheet(textIn(challenge.sentence, useLocale()))}
      judged={live.now}
      found={findings.all}
      open={findings.open}
      mended={findings.mayMend ? findings.mended : null}
      missing={findings.withWords}
      resting={resting}
      keys={{ ...keys, g: findings.next }}
      above={(place) => <OpenFinding findings={findings} onMend={onMend} {...place} />}
    />
  );
}
