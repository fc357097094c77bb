import { expect, it } from 'vitest';
import { gaugePage } from '../../server/print/aids.ts';
import { pdfOf } from '../../server/print/pdf.ts';
import { svgOf } from '../../server/print/svg.ts';
import { printTools } from '../../server/print/tools.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { PAPERS, type PaperName } from '../../shared/wire/print.ts';
import { lookAt } from '../printed.ts';

/**
 * Sizes in PDF points of 1/72 in (ISO 32000-1, 8.3.2). A4 and A3: ISO 216, 210 × 297 and 297 × 420 mm.
 * Letter and Tabloid: ANSI/ASME Y14.1 sizes A and B, 8.5 × 11 and 11 × 17 in.
 */
const POINTS: Readonly<Record<PaperName, readonly [number, number]>> = {
  A4: [595.2756, 841.8898],
  A3: [841.8898, 1190.5512],
  Letter: [612, 792],
  Tabloid: [792, 1224],
};
/** The same in mm, as an SVG says them. */
const MM: Readonly<Record<PaperName, readonly [string, string]>> = {
  A4: ['210mm', '297mm'],
  A3: ['297mm', '420mm'],
  Letter: ['215.9mm', '279.4mm'],
  Tabloid: ['279.4mm', '431.8mm'],
};

it.each(PAPERS)(
  'a page on %s has its size in points, in units of 1/72 in, and in mm as SVG',
  async (paper) => {
    const page = gaugePage(DEMO_KIT, paper, await printTools());
    const bytes = await pdfOf('size', [() => [page]]);
    await lookAt(bytes, async ([seen]) => {
      expect(seen!.points.w).toBeCloseTo(POINTS[paper][0], 3);
      expect(seen!.points.h).toBeCloseTo(POINTS[paper][1], 3);
      expect(seen!.userUnit).toBe(1);
    });
    const [w, h] = MM[paper];
    expect(svgOf('size', page)).toContain(`width="${w}" height="${h}"`);
  },
);
