import { norm } from '../../shared/geometry/exact-math.ts';
import { type PieceShape, pieceAt, pieceDirection, shapeOf } from '../../shared/geometry/piece.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import type { FrayedStretch } from '../../shared/steadiness/frayed-ink.ts';
import { COLOUR } from './colours.ts';
import { type Painter, paintLabel } from './painter.ts';

/** Along the line from one loose fibre to the next, and how long the longest are, mm. */
const FIBRE = { apart: 1.1, least: 2, most: 11 } as const;

interface Fibre {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
}

/** A share between 0 and 1 that looks like chance and is the same for the same number. */
const jitter = (n: number): number => {
  const x = (n * 0.754877666) % 1;
  return x < 0 ? x + 1 : x;
};

function fibresOf(pieces: readonly PieceShape[], share: number, half: Mm): Fibre[] {
  const reach = FIBRE.least + (FIBRE.most - FIBRE.least) * Math.min(1, share * 1.5);
  return pieces.flatMap((piece, p) => {
    const count = Math.max(1, Math.floor(piece.length / FIBRE.apart));
    return Array.from({ length: count }, (_, i): Fibre => {
      const n = 97 * p + i;
      const at = pieceAt(piece, (piece.length * (i + 0.5)) / count);
      const along = pieceDirection(piece, (piece.length * (i + 0.5)) / count);
      const side = i % 2 === 0 ? 1 : -1;
      const far = half + reach * (0.45 + 0.55 * jitter(n));
      const lean = (jitter(3 * n + 1) - 0.3) * reach;
      const across = { x: -along.y * side, y: along.x * side };
      const from = { x: at.x + across.x * half * 0.7, y: at.y + across.y * half * 0.7 };
      const to = { x: at.x + across.x * far + along.x * lean, y: at.y + across.y * far + along.y * lean };
      return { from, to };
    });
  });
}

/** Fewer of a hundred than this are no place of their own. */
const LEAST_SHARE = 0.01;
/** How far the counts stand off the line, mm. */
const COUNT_OFF = 16;

export interface Figures {
  /** How many of the worst places have their count beside them. */
  readonly figures?: number;
  /** Of its letters, CSS pixels. */
  readonly size?: number;
}

/**
 * Ink that frays where robots left the line: the more of `of` did, the longer the fibres; and how many, in
 * figures beside the worst places.
 */
export const paintFrayed =
  (
    stretches: readonly FrayedStretch[],
    of: number,
    width: Mm,
    { figures = 3, size: letters = 15 }: Figures = {},
  ): Painter =>
  (ctx, pixel) => {
    const worth = stretches.filter(({ left }) => left / of >= LEAST_SHARE);
    ctx.lineCap = 'round';
    ctx.strokeStyle = COLOUR.ink;
    ctx.lineWidth = Math.max(0.35, pixel);
    ctx.beginPath();
    for (const { pieces, left } of worth) {
      for (const { from, to } of fibresOf(pieces.map(shapeOf), left / of, width / 2)) {
        ctx.moveTo(from.x, from.y);
        ctx.lineTo(to.x, to.y);
      }
    }
    ctx.stroke();
    for (const { pieces, at, left } of worth.slice(0, figures)) {
      const piece = shapeOf(pieces[Math.floor(pieces.length / 2)]!);
      const along = pieceDirection(piece, piece.length / 2);
      const size = norm(along.x, along.y) || 1;
      const place = { x: at.x - (along.y / size) * COUNT_OFF, y: at.y + (along.x / size) * COUNT_OFF };
      const label = { text: String(left), at: place, align: 'middle', baseline: 'middle' } as const;
      paintLabel(ctx, label, letters, pixel, COLOUR.caution);
    }
  };

/** One way on from a junction at which the robot decides by itself. */
export interface ForkArm {
  readonly at: PaperPoint;
  readonly heading: PaperPoint;
  readonly text: string;
  readonly chosen: boolean;
}

const ARROW = { from: 12, to: 30, head: 4.5, text: 38 } as const;

/** Arrows from a junction along its ways, each with its chance. */
export const paintForkArms =
  (arms: readonly ForkArm[]): Painter =>
  (ctx, pixel) => {
    ctx.lineCap = 'round';
    ctx.lineJoin = 'round';
    for (const { at, heading, text, chosen } of arms) {
      const along = (far: Mm, aside: Mm): PaperPoint => ({
        x: at.x + heading.x * far - heading.y * aside,
        y: at.y + heading.y * far + heading.x * aside,
      });
      const lines = [
        [along(ARROW.from, 0), along(ARROW.to, 0)],
        [
          along(ARROW.to - ARROW.head, -ARROW.head),
          along(ARROW.to, 0),
          along(ARROW.to - ARROW.head, ARROW.head),
        ],
      ];
      ctx.beginPath();
      for (const [first, ...rest] of lines) {
        ctx.moveTo(first!.x, first!.y);
        for (const p of rest) ctx.lineTo(p.x, p.y);
      }
      ctx.strokeStyle = COLOUR.sheet;
      ctx.lineWidth = (chosen ? 8 : 6) * pixel;
      ctx.stroke();
      ctx.strokeStyle = COLOUR.accent;
      ctx.lineWidth = (chosen ? 4 : 2) * pixel;
      ctx.stroke();
      const label = { text, at: along(ARROW.text, 0), align: 'middle', baseline: 'middle' } as const;
      paintLabel(ctx, label, 15, pixel, COLOUR.accent);
    }
  };
