import type { Drawing } from '../documents/design.ts';
import { pointAt } from '../geometry/path.ts';
import type { LaidLine } from '../track/layout.ts';
import type { Draft, Rule, RuleView } from './context.ts';
import { linesOn, stretchPlace } from './drawn.ts';
import { findingAt, lengths } from './findings.ts';

/** A line is drawn neither thinner nor thicker than the sensors like. */
export const lineWidth: Rule = {
  id: 'R-line-width',
  check: (view) =>
    view.track.layout.lines.filter((line) => !line.given).flatMap((line) => checkLine(view, line)),
};

function checkLine(view: RuleView, line: LaidLine): Draft[] {
  const { least, most } = view.kit.rules.lineWidth;
  const { width, path } = line;
  if (width >= least && width <= most) return [];
  const thin = width < least;
  const finding = findingAt(
    'R-line-width',
    stretchPlace(view, path, 0, path.length, pointAt(path, path.length / 2)),
    {
      variant: thin ? 'thin' : 'thick',
      severity: thin ? 'untidy' : 'may-stop',
      ...lengths(width, thin ? least : most),
      remedy: 'set-width',
    },
  );
  return [{ finding, mends: () => [withWidth(view, line)] }];
}

function withWidth({ drawing, kit }: RuleView, { path }: LaidLine): Drawing {
  const changed = linesOn(drawing, path);
  const { nominal } = kit.rules.lineWidth;
  return {
    ...drawing,
    lines: drawing.lines.map((line) => (changed.includes(line) ? { ...line, width: nominal } : line)),
  };
}
