import fontkit from '@pdf-lib/fontkit';
import {
  appendBezierCurve,
  beginText,
  clip,
  closePath,
  concatTransformationMatrix,
  endPath,
  endText,
  fill,
  LineCapStyle,
  LineJoinStyle,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFFont,
  type PDFName,
  type PDFOperator,
  type PDFPage,
  PrintScaling,
  popGraphicsState,
  pushGraphicsState,
  setDashPattern,
  setFillingRgbColor,
  setFontAndSize,
  setLineCap,
  setLineJoin,
  setLineWidth,
  setStrokingRgbColor,
  setTextMatrix,
  showText,
  stroke,
} from 'pdf-lib';
import type { Locale } from '../../shared/documents/values.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import type { Item, Page, Segment, Stroke } from './page.ts';
import { fontBytes } from './type.ts';

/** PDF's unit of default user space is 1/72 in (ISO 32000-1, 8.3.2). */
const POINTS_A_MM = 72 / 25.4;

/** Thousandths of a mm are enough, and keep the file small. */
const short = (value: number): number => Math.round(value * 1000) / 1000;

function channels(color: string): [number, number, number] {
  const value = Number.parseInt(color.slice(1), 16);
  return [(value >> 16) & 255, (value >> 8) & 255, value & 255].map((c) => short(c / 255)) as [
    number,
    number,
    number,
  ];
}

export interface PdfCare {
  /** What the file says it is written in, for those who have it read out. */
  readonly language?: Locale;
  /** Hears after each part how many are done. */
  readonly told?: (done: number) => void;
  /** Makes the work end early; it then rejects with the signal's reason. */
  readonly signal?: AbortSignal;
}

/**
 * Parts of some pages each as one PDF at true size. Reader programs are asked not to fit pages to the
 * paper. After each page other work has its turn.
 */
export async function pdfOf(
  title: string,
  parts: readonly (() => readonly Page[])[],
  { language = 'en', told = () => undefined, signal }: PdfCare = {},
): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.registerFontkit(fontkit);
  pdf.setTitle(title, { showInWindowTitleBar: true });
  pdf.setCreator('Harbour Lines');
  pdf.setLanguage(language);
  pdf.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  const fonts = {
    plain: await pdf.embedFont(fontBytes(false), { subset: true }),
    bold: await pdf.embedFont(fontBytes(true), { subset: true }),
  };
  for (const [i, part] of parts.entries()) {
    for (const page of part()) {
      signal?.throwIfAborted();
      addPage(pdf, page, fonts);
      await new Promise((resolve) => setImmediate(resolve));
    }
    told(i + 1);
  }
  return pdf.save();
}

interface Fonts {
  readonly plain: PDFFont;
  readonly bold: PDFFont;
}

function addPage(pdf: PDFDocument, { w, h, items }: Page, fonts: Fonts): void {
  const page = pdf.addPage([w * POINTS_A_MM, h * POINTS_A_MM]);
  const writer = new Writer(page, fonts);
  page.pushOperators(
    pushGraphicsState(),
    // From here on: mm from the top left corner, y down.
    concatTransformationMatrix(POINTS_A_MM, 0, 0, -POINTS_A_MM, 0, h * POINTS_A_MM),
    setLineJoin(LineJoinStyle.Round),
    ...items.flatMap((item) => writer.item(item)),
    popGraphicsState(),
  );
}

class Writer {
  readonly #page: PDFPage;
  readonly #fonts: Fonts;
  readonly #keys = new Map<PDFFont, PDFName>();

  constructor(page: PDFPage, fonts: Fonts) {
    this.#page = page;
    this.#fonts = fonts;
  }

  item(item: Item): PDFOperator[] {
    switch (item.kind) {
      case 'path':
        return pathOperators(item.segments, item.stroke, item.fill);
      case 'text':
        return this.#text(item);
      case 'group':
        return [
          pushGraphicsState(),
          concatTransformationMatrix(item.scale, 0, 0, item.scale, short(item.x), short(item.y)),
          ...(item.clip ? [...item.clip.map(segmentOperator), clip(), endPath()] : []),
          ...item.items.flatMap((each) => this.item(each)),
          popGraphicsState(),
        ];
    }
  }

  #text({ text, at, size, bold, align, color }: Extract<Item, { kind: 'text' }>): PDFOperator[] {
    const font = bold ? this.#fonts.bold : this.#fonts.plain;
    const width: Mm = align === 'left' ? 0 : font.widthOfTextAtSize(text, size);
    const x = at.x - (align === 'middle' ? width / 2 : width);
    return [
      beginText(),
      setFillingRgbColor(...channels(color)),
      setFontAndSize(this.#key(font), short(size)),
      // The page's frame has y down; letters must not stand on their heads.
      setTextMatrix(1, 0, 0, -1, short(x), short(at.y)),
      showText(font.encodeText(text)),
      endText(),
    ];
  }

  #key(font: PDFFont): PDFName {
    const known = this.#keys.get(font);
    if (known) return known;
    const key = this.#page.node.newFontDictionary(font.name, font.ref);
    this.#keys.set(font, key);
    return key;
  }
}

function pathOperators(segments: readonly Segment[], line?: Stroke, color?: string): PDFOperator[] {
  const drawn = segments.map(segmentOperator);
  const inside = color === undefined ? [] : [setFillingRgbColor(...channels(color)), ...drawn, fill()];
  if (!line) return inside;
  return [
    ...inside,
    setStrokingRgbColor(...channels(line.color)),
    setLineWidth(short(line.width)),
    setLineCap(line.square ? LineCapStyle.Butt : LineCapStyle.Round),
    setDashPattern([...(line.dash ?? [])], 0),
    ...drawn,
    stroke(),
  ];
}

function segmentOperator(segment: Segment): PDFOperator {
  switch (segment[0]) {
    case 'M':
      return moveTo(short(segment[1]), short(segment[2]));
    case 'L':
      return lineTo(short(segment[1]), short(segment[2]));
    case 'C':
      return appendBezierCurve(
        ...(segment.slice(1).map((value) => short(value as number)) as Parameters<typeof appendBezierCurve>),
      );
    case 'Z':
      return closePath();
  }
}
