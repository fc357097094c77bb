import { useEffect, useMemo } from 'react';
import type { Design } from '../../../shared/documents/design.ts';
import type { ScreenPoint } from '../../../shared/geometry/units.ts';
import { pointsOf } from '../../canvas/placement.ts';
import type { Camera } from '../../canvas/use-camera.ts';
import { type Box, toScreen, type View } from '../../canvas/view.ts';
import { useAnnounce } from '../../parts/announcer.tsx';
import { useWords } from '../../parts/use-words.ts';
import { Callout } from './callout.tsx';
import type { Findings } from './use-findings.ts';

export interface OpenFindingProps {
  readonly findings: Findings;
  readonly camera: Camera;
  readonly view: View;
  readonly within: Box;
  readonly clear: readonly ScreenPoint[];
  readonly onMend: (mended: Design) => void;
}

/** The buttons that enlarge the sheet stand in this corner, CSS pixels. */
const CORNER = { width: 76, height: 180 } as const;

/** The finding that is open, brought into view, beside its place and clear of ink and buttons. */
export function OpenFinding({ findings, camera, view, within, clear, onMend }: OpenFindingProps) {
  const finding = findings.open;
  useEffect(() => {
    if (finding) camera.reveal(finding.place.at);
  }, [camera, finding]);
  useTold(findings);
  const { width } = within;
  const clearOfButtons = useMemo(
    () => [...clear, ...pointsOf({ left: width - CORNER.width, top: 0, ...CORNER })],
    [clear, width],
  );
  if (!finding) return null;
  const { mended } = findings;
  return (
    <Callout
      finding={finding}
      number={findings.all.indexOf(finding) + 1}
      of={findings.all.length}
      at={toScreen(view, finding.place.at)}
      within={within}
      clear={clearOfButtons}
      withWords={findings.withWords}
      triesLeft={mended ? findings.triesLeft : 0}
      onMend={mended && findings.mayMend ? () => onMend(mended) : null}
      onNext={findings.next}
      onClose={findings.close}
    />
  );
}

/** Says what opened, once, to those who hear the page. */
function useTold({ open, withWords }: Findings): void {
  const words = useWords();
  const announce = useAnnounce();
  const said = open && words.findings.said(open);
  const sentence =
    said && (withWords ? `${said.title}. ${said.sentence}` : words.tablet.building.lookClosely);
  useEffect(() => {
    if (sentence) announce(sentence);
  }, [announce, sentence]);
}
