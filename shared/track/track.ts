import type { Direction } from '../geometry/piece.ts';
import type { Mm, PaperPoint, PerMm, Rad } from '../geometry/units.ts';
import type { LaidLine, LaidMark, Layout } from './layout.ts';
import type { Pairs } from './pairs.ts';

/** Lines, marks and given lines as a planar graph. Everything is found by its position in a list. */
export interface Track {
  readonly layout: Layout;
  readonly pairs: Pairs;
  /** Beside `layout.lines`, in the same order. */
  readonly lines: readonly TrackLine[];
  readonly nodes: readonly TrackNode[];
  /** Directed: edges 2k and 2k + 1 are one stretch of line, driven from its two ends. */
  readonly edges: readonly TrackEdge[];
  readonly crossings: readonly Crossing[];
}

/**
 * `end`: one arm, a loose end. `corner`: two arms, not straight on. `joint`: two arms, straight on
 * (two lines end to end, or a ring). `junction`: three arms or more.
 */
export type NodeKind = 'end' | 'corner' | 'joint' | 'junction';

export interface TrackNode {
  readonly index: number;
  readonly kind: NodeKind;
  readonly at: PaperPoint;
  /** In order of the angle, clockwise on the sheet from +x. */
  readonly arms: readonly Arm[];
}

export interface Arm {
  /** The directed edge that leaves the node here. */
  readonly edge: number;
  /** Where the line leads exactly at the node. */
  readonly tangent: Direction;
  /** Where the line is at the sensor bar's distance: what a robot on the node sees of the arm. */
  readonly heading: Direction;
}

/** A stretch of one line between two nodes, in one direction. */
export interface TrackEdge {
  readonly index: number;
  readonly from: number;
  readonly to: number;
  readonly length: Mm;
  /** Index of the line; the stretch lies between the ways `low` and `high` along it. */
  readonly line: number;
  readonly low: Mm;
  readonly high: Mm;
  /** Whether the edge runs in the direction of its line. */
  readonly along: boolean;
  /** Pieces by their curvature, positive to the right of this edge's travel, in order. */
  readonly bends: readonly Bend[];
  /** Marks as they are met, in order of the way along this edge. */
  readonly marks: readonly EdgeMark[];
}

export interface Bend {
  readonly from: Mm;
  readonly to: Mm;
  readonly curvature: PerMm;
}

export interface EdgeMark {
  readonly mark: LaidMark;
  /** Ways along the edge; a mark that hangs over a node may begin below 0 or end past the length. */
  readonly from: Mm;
  readonly to: Mm;
  /** The word as it reads in this direction. */
  readonly word: string;
  readonly along: boolean;
}

export interface TrackLine {
  readonly line: LaidLine;
  /** Where the line meets nodes, in order of the way along it. */
  readonly cuts: readonly Cut[];
  /** The edges in the line's direction, in order. Stretches inside a junction have none. */
  readonly edges: readonly number[];
}

export interface Cut {
  readonly way: Mm;
  readonly node: number;
}

/** Where a line passes from one side of another (or of itself) to the other side. */
export interface Crossing {
  readonly at: PaperPoint;
  /** Between the two lines, 0 to a right angle. */
  readonly angle: Rad;
  readonly a: { readonly line: number; readonly way: Mm };
  readonly b: { readonly line: number; readonly way: Mm };
}

/** The same stretch driven from the other end. */
export const twin = (edge: number): number => edge ^ 1;
