import { useMemo, useState } from 'react';
import { findingsOnGiven } from '../../../shared/search/certainty.ts';
import { DrawingSurface } from '../../editor/surface/drawing-surface.tsx';
import { Tools } from '../../editor/surface/tools.tsx';
import { Tray } from '../../editor/surface/tray.tsx';
import { useKeys } from '../../editor/surface/use-keys.ts';
import { useWholeWords } from '../whole-words.ts';
import { useLayerSession } from './layer-session.ts';
import { type Layer, layersOf } from './layers.ts';
import { useChallenge, type Work } from './work.ts';

const NO_KEYS = {};
/** So many of the rules' words stand beside the sheet; rings show all places. */
const MOST_TITLES = 3;

/** Drawing with the tablet's tools: what is given, the fault of a mend, and one's own solution. */
export function LinesPart({ work }: { readonly work: Work }) {
  const words = useWholeWords();
  const { lines } = words.builder;
  const challenge = useChallenge(work);
  const layers = layersOf(challenge.play);
  const [wanted, setWanted] = useState<Layer>(layers[0]!);
  const layer = layers.includes(wanted) ? wanted : layers[0]!;
  const session = useLayerSession(work, layer);
  useKeys(session, false);
  const found = useMemo(() => (layer === 'given' ? findingsOnGiven(challenge) : []), [layer, challenge]);
  const titles = [...new Set(found.map((finding) => words.findings.said(finding).title))];
  return (
    <>
      <Tools session={session} />
      <DrawingSurface
        session={session}
        label={lines.sheet}
        judged={null}
        found={found}
        open={null}
        mended={null}
        missing={false}
        resting={false}
        keys={NO_KEYS}
      />
      <aside className="builder-aside builder-lines" aria-label={lines.title}>
        <div className="builder-layers" role="radiogroup" aria-label={lines.which}>
          {layers.map((each) => (
            <label key={each} className="choice" data-chosen={each === layer}>
              <input
                type="radio"
                name="layer"
                className="tool-input"
                checked={each === layer}
                onChange={() => setWanted(each)}
              />
              {lines.layer(each)}
            </label>
          ))}
        </div>
        <p className="desk-quiet">{lines.note(layer)}</p>
        {found.length > 0 && (
          <ul className="builder-rules-say" aria-label={words.desk.team.findings}>
            {titles.slice(0, MOST_TITLES).map((title) => (
              <li key={title}>{title}</li>
            ))}
          </ul>
        )}
        <Tray session={session} />
      </aside>
    </>
  );
}
