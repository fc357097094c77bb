import type { PaperPoint } from '../../../shared/geometry/units.ts';
import { begin, type Touch } from '../gesture.ts';
import type { Proposal } from '../proposal.ts';
import { finish, follow, type Progress, propose, start } from '../propose.ts';
import type { DrawingSession } from './session.ts';

/** Shows what would come of a gesture; null when none is under way. */
export type ShowProposal = (
  proposal: Proposal | null,
  progress: Progress | null,
  touch: Touch | null,
) => void;

/**
 * What one finger, pen or mouse does to the drawing. It is worked out once a frame past React and
 * committed once, when it goes up.
 */
export class Hand {
  readonly #session: DrawingSession;
  readonly #show: ShowProposal;
  #progress: Progress | null = null;
  #touch: Touch | null = null;
  #frame = 0;

  constructor(session: DrawingSession, show: ShowProposal) {
    this.#session = session;
    this.#show = show;
  }

  begin(touch: Touch): void {
    const { editor, context } = this.#session;
    this.#touch = touch;
    this.#progress = start(begin(editor, context, touch), editor, context, touch);
    this.#draw();
  }

  /** Through all these places, to the touch. */
  follow(points: readonly PaperPoint[], touch: Touch): void {
    if (!this.#progress) return;
    const { editor, context } = this.#session;
    this.#touch = touch;
    this.#progress = follow(this.#progress, editor, context, points, touch.reach);
    if (this.#frame === 0) this.#frame = requestAnimationFrame(() => this.#draw());
  }

  finish(touch: Touch): void {
    this.#end(touch, true);
  }

  /** The system took the finger away: a stroke is kept as far as it came, a pull is not. */
  break(): void {
    if (this.#touch) this.#end(this.#touch, this.#progress?.gesture.kind === 'stroke');
  }

  /** As if the finger had never come down. */
  drop(): void {
    if (this.#touch) this.#end(this.#touch, false);
  }

  #end(touch: Touch, keep: boolean): void {
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    const progress = this.#progress;
    this.#progress = null;
    this.#touch = null;
    this.#show(null, null, null);
    const { editor, context } = this.#session;
    if (progress && keep) this.#session.take(finish(progress, editor, context, touch));
  }

  #draw(): void {
    this.#frame = 0;
    if (!this.#progress || !this.#touch) return;
    const { editor, context } = this.#session;
    const proposal = propose(this.#progress, editor, context, this.#touch);
    this.#show(proposal, this.#progress, this.#touch);
  }
}
