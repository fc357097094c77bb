import fontkit from '@pdf-lib/fontkit';
import { PDFDict, PDFDocument, PDFName } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { gaugePage, NOTCH_DEGREES, patchPage, slipsPage } from '../../../../server/print/aids.ts';
import { chartPages } from '../../../../server/print/chart.ts';
import type { Item } from '../../../../server/print/page.ts';
import { pdfOf } from '../../../../server/print/pdf.ts';
import { type PrintSource, printed } from '../../../../server/print/print.ts';
import { svgOf } from '../../../../server/print/svg.ts';
import { printTools } from '../../../../server/print/tools.ts';
import { fontBytes } from '../../../../server/print/type.ts';
import { storedChallenge } from '../../../../server/rooms/documents.ts';
import { readyNamed } from '../../../../server/rooms/ready.ts';
import { DEMO_KIT } from '../../../../shared/kit/demo-kit.ts';
import { EMBLEMS } from '../../../../shared/room/state.ts';
import { PAPERS, PRINT_KINDS } from '../../../../shared/wire/print.ts';
import { CLOSING, EVIDENCE, PICTURE } from './after-lesson.ts';
import { placed, textsOf } from './items.ts';

const tools = await printTools();
const { title, challenge } = readyNamed('one-fast-stretch')!;
const on = { title, challenge, id: storedChallenge(challenge).id };
const drawing = { drawing: challenge.model!.drawing, id: 'd'.repeat(64), on };
const source: PrintSource = {
  word: 'plum-42',
  teamCount: 2,
  address: '192.0.2.1:4310',
  kit: DEMO_KIT,
  challenge: on,
  team: { emblem: 'kite', drawing },
  teams: [{ emblem: 'kite', drawing }, { emblem: 'shell' }],
  closing: CLOSING,
  evidence: EVIDENCE,
  picture: PICTURE,
};
const ask = { paper: 'A4', lines: 'ink', marks: 'colour', key: 'yes' } as const;

describe('the chart for the wall', () => {
  it('has a row a mark with both ends named: nine rows of twelve words', () => {
    const texts = chartPages(DEMO_KIT, 'A4', tools).flatMap((page) => textsOf(page.items));
    for (const name of ['faster', 'slower', 'take left', 'take right', 'turn back', 'pass'])
      expect(
        texts.filter((text) => text === name),
        name,
      ).toHaveLength(1);
    for (const name of ['straight on', 'steady', 'tiptoe', 'wait', 'call', 'park'])
      expect(
        texts.filter((text) => text === name),
        name,
      ).toHaveLength(2);
  });

  it('goes on with a further page before rows get too low to be read', () => {
    const chart = Array.from({ length: 30 }, (_, i) => ({
      word: 'CAV'.repeat(2).slice(0, 2 + (i % 4)) + String.fromCharCode(65 + (i % 26)),
      action: { kind: 'park' } as const,
    }));
    expect(chartPages({ ...DEMO_KIT, chart }, 'A4', tools).length).toBeGreaterThan(1);
  });
});

describe('aids', () => {
  it('have the kit’s own lengths: widths of line, plain line, band, and a notch of 60°', () => {
    const all = placed(gaugePage(DEMO_KIT, 'A4', tools).items);
    const strokes = all.flatMap(({ item, points }) =>
      item.kind === 'path' && item.stroke ? [{ ...item.stroke, points }] : [],
    );
    for (const width of [4, 5, 7]) expect(strokes.some((stroke) => stroke.width === width)).toBe(true);
    const long = (points: readonly { x: number; y: number }[]) => points.at(-1)!.x - points[0]!.x;
    expect(strokes.some(({ width, points }) => width === 0.6 && Math.abs(long(points) - 25) < 1e-9)).toBe(
      true,
    );
    const slants = strokes.filter(
      ({ points }) => points.length === 2 && points[0]!.x !== points[1]!.x && points[0]!.y !== points[1]!.y,
    );
    const angle = ({ points: [a, b] }: (typeof slants)[0]) =>
      (Math.atan2(b!.y - a!.y, b!.x - a!.x) * 180) / Math.PI;
    const [first, second] = slants.map((slant) => Math.abs((angle(slant) + 180) % 180));
    expect(180 - Math.abs(first! - second!)).toBeCloseTo(180 - Math.abs(180 - NOTCH_DEGREES), 6);
  });

  it('have the kit’s patch: a square of 45 mm, or what the kit says', () => {
    const sizeOf = (kit: typeof DEMO_KIT) => {
      const dark = placed(patchPage(kit, 'A4', tools).items).find(
        ({ item }) => item.kind === 'path' && item.fill === kit.line.color,
      )!;
      const xs = dark.points.map(({ x }) => x);
      return Math.max(...xs) - Math.min(...xs);
    };
    expect(sizeOf(DEMO_KIT)).toBeCloseTo(45, 9);
    expect(sizeOf({ ...DEMO_KIT, patch: { shape: 'round', size: 30 } })).toBeCloseTo(30, 9);
  });

  it('have slips with three columns and the team’s emblem', () => {
    const texts = textsOf(slipsPage('A4', 'kite', tools).items);
    expect(texts.slice(0, 5)).toEqual(['Kite', 'challenge:', 'we think', 'it did', 'because']);
  });
});

/** Two texts of a page that lie over one another. */
function meeting(items: readonly Item[]): string[] {
  const texts = placed(items).flatMap(({ item, points }) => {
    if (item.kind !== 'text' || points.length === 0) return [];
    const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
    const [left, right] = [Math.min(...xs), Math.max(...xs)];
    return [{ text: item.text, left, right, top: Math.min(...ys), bottom: Math.max(...ys) }];
  });
  return texts.flatMap((a, i) =>
    texts
      .slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.text} × ${b.text}`),
  );
}

describe('printed in Spanish', async () => {
  it('says so in the file', async () => {
    const pdf = await PDFDocument.load(await pdfOf('x', [() => []], { language: 'es' }));
    expect(String(pdf.catalog.get(PDFName.of('Lang')))).toBe('(es)');
  });

  const spanish = await printTools('es');
  const named = { ...on, title: readyNamed('one-fast-stretch', 'es')!.title };
  it.each(PRINT_KINDS)('%s has no text over another, and only letters that the face has', (kind) => {
    const faces = [false, true].map((bold) => fontkit.create(fontBytes(bold)));
    for (const paper of PAPERS) {
      const print = printed({ ...ask, kind, paper }, { ...source, challenge: named }, spanish);
      if (!print.ok) throw new Error(print.why);
      for (const page of print.parts.flatMap((part) => part())) {
        const letters = new Set(textsOf(page.items).join(''));
        const unknown = [...letters].filter((letter) =>
          faces.some((face) => !face.hasGlyphForCodePoint(letter.codePointAt(0)!)),
        );
        expect(unknown).toEqual([]);
        expect(meeting(page.items), paper).toEqual([]);
      }
    }
  });
});

describe('printed', () => {
  it.each(PRINT_KINDS)('makes %s on every paper, with all of it on the page', (kind) => {
    for (const paper of PAPERS) {
      const print = printed({ ...ask, kind, paper }, source, tools);
      if (!print.ok) throw new Error(print.why);
      for (const page of print.parts.flatMap((part) => part())) {
        const texts = placed(page.items.filter((item) => item.kind !== 'group' || !item.clip)).filter(
          ({ item }) => item.kind === 'text',
        );
        const off = texts.filter(({ points }) =>
          points.some(({ x, y }) => x < 3 || y < 3 || x > page.w - 3 || y > page.h - 3),
        );
        expect(
          off.map(({ item }) => item),
          paper,
        ).toEqual([]);
      }
    }
  });

  it('says what is missing', () => {
    const { challenge: _, team: __, ...bare } = source;
    const why = (kind: (typeof PRINT_KINDS)[number]) => {
      const print = printed({ ...ask, kind }, bare, tools);
      return print.ok ? 'printed' : print.why;
    };
    expect(['sheet', 'predict', 'drawing', 'pack', 'chart'].map((kind) => why(kind as 'sheet'))).toEqual([
      'no-challenge',
      'no-challenge',
      'no-drawing',
      'no-drawing',
      'printed',
    ]);
  });

  it('puts a pack for each team into one file, after what is for everybody', () => {
    const print = printed({ ...ask, kind: 'class' }, source, tools);
    expect(print.ok && print.parts.map((part) => part().length)).toEqual([5, 2, 2]);
  });
});

describe('emblems', () => {
  it('are all there, as strokes within their square, and print', async () => {
    expect(Object.keys(tools.emblems).sort()).toEqual([...EMBLEMS].sort());
    for (const segments of Object.values(tools.emblems)) {
      const values = segments.flatMap((segment) => segment.slice(1) as number[]);
      expect(values.length).toBeGreaterThan(3);
      for (const value of values) expect(value >= 0 && value <= 24).toBe(true);
    }
    const pages = EMBLEMS.map((emblem) => slipsPage('A4', emblem, tools));
    await expect(pdfOf('Emblems', [() => pages])).resolves.toBeInstanceOf(Uint8Array);
  });
});

describe('files', () => {
  it('are PDF with subsets of both fonts inside, asking readers not to scale', async () => {
    const bytes = await pdfOf('Slips', [() => [slipsPage('A4', 'kite', tools)]]);
    const read = await PDFDocument.load(bytes);
    const fonts = read.context
      .enumerateIndirectObjects()
      .flatMap(([, object]) =>
        object instanceof PDFDict && object.has(PDFName.of('FontFile2'))
          ? [object.get(PDFName.of('FontName'))!.toString()]
          : [],
      );
    expect(fonts.map((name) => name.replace(/-\d+$/, '')).sort()).toEqual([
      '/AtkinsonHyperlegibleNext-Bold',
      '/AtkinsonHyperlegibleNext-Regular',
    ]);
    expect(read.catalog.getOrCreateViewerPreferences().getPrintScaling()).toBe('None');
    expect(bytes.length).toBeLessThan(15_000);
  });

  it('end early when nobody waits any more', async () => {
    const stop = new AbortController();
    const parts = [() => [slipsPage('A4', undefined, tools)], () => [slipsPage('A4', undefined, tools)]];
    const told: number[] = [];
    const work = pdfOf('Slips', parts, {
      told: (done) => {
        told.push(done);
        stop.abort();
      },
      signal: stop.signal,
    });
    await expect(work).rejects.toThrow();
    expect(told).toEqual([1]);
  });

  it('are SVG whose letters are outlines and whose texts can’t break out', () => {
    const page = slipsPage('A4', 'kite', tools);
    const svg = svgOf('<b>"&', page);
    expect(svg).toContain('<title>&lt;b&gt;&quot;&amp;</title>');
    expect(svg).not.toContain('<text');
  });

  it('carry fonts whose tables have the checksums that the font’s own directory says', () => {
    // OpenType, "Calculating checksums": the sum of big-endian 32-bit words, padded with zeros.
    for (const bold of [false, true]) {
      const font = Buffer.from(fontBytes(bold));
      const count = font.readUInt16BE(4);
      expect(count).toBeGreaterThan(8);
      for (let i = 0; i < count; i++) {
        const entry = 12 + i * 16;
        const tag = font.toString('latin1', entry, entry + 4);
        const [sum, offset, length] = [4, 8, 12].map((at) => font.readUInt32BE(entry + at)) as [
          number,
          number,
          number,
        ];
        let total = 0;
        for (let at = offset; at < offset + length; at += 4) total = (total + font.readUInt32BE(at)) >>> 0;
        // The head table is summed as if its own adjustment were 0.
        if (tag === 'head') total = (total - font.readUInt32BE(offset + 8)) >>> 0;
        expect(total, tag).toBe(sum);
      }
    }
  });
});
