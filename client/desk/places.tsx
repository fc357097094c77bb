import type { Sheet } from '../../shared/documents/sheet.ts';
import type { Finding } from '../../shared/documents/verdict.ts';
import './places.css';

export interface PlacesProps {
  readonly sheet: Sheet;
  readonly findings: readonly Finding[];
}

/** Rings on a miniature where findings are. Stands over a picture of the same sheet. */
export function Places({ sheet, findings }: PlacesProps) {
  const r = Math.max(sheet.w, sheet.h) / 26;
  return (
    <svg className="places" viewBox={`0 0 ${sheet.w} ${sheet.h}`} aria-hidden="true" focusable="false">
      {findings.map((finding) => (
        <circle
          key={finding.id}
          className="place"
          data-severity={finding.severity}
          cx={finding.place.at.x}
          cy={finding.place.at.y}
          r={r}
          strokeWidth={r / 3.2}
        />
      ))}
    </svg>
  );
}
