import { useMemo } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import { trayRows } from '../../editor/surface/tray-rows.ts';
import { MarkPicture } from '../../parts/mark-picture.tsx';
import { useWords } from '../../parts/use-words.ts';

/** What the class's marks mean, to look things up: one row a mark, both ends named. */
export function Chart({ kit }: { readonly kit: Kit }) {
  const { actions, tablet } = useWords();
  const rows = useMemo(() => trayRows(kit), [kit]);
  return (
    <ul className="predict-chart" aria-label={tablet.building.marks}>
      {rows.map((row) => (
        <li key={row.word} className="chart-row">
          <span className="tray-name">
            {actions.name(row.action)}
            {row.back && ' ▸'}
          </span>
          <MarkPicture kit={kit} word={row.word} />
          <span>{row.back && <>◂ {actions.name(row.back)}</>}</span>
        </li>
      ))}
    </ul>
  );
}
