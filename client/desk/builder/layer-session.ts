import { useEffect, useMemo, useRef } from 'react';
import type { Tool } from '../../editor/model.ts';
import { toolsOf } from '../../editor/model.ts';
import { DrawingSession } from '../../editor/surface/session.ts';
import { contextIn, designIn, type Layer } from './layers.ts';
import { useWork, type Work } from './work.ts';

/** Drawing in one layer of a challenge. The way back is that of the whole challenge. */
class LayerSession extends DrawingSession {
  readonly #work: Work;

  constructor(work: Work, layer: Layer) {
    const { challenge, past, future } = work.store.getState();
    const design = designIn(challenge, layer);
    // Only whether there is a way is asked here.
    const step = { design, before: null };
    super(design, contextIn(challenge, layer), { past: past && step, future: future && step });
    this.#work = work;
  }

  override readonly undo = (): void => this.#work.undo();
  override readonly redo = (): void => this.#work.redo();
}

/** A pen for a layer; a new one whenever something else than a pen has changed the challenge. */
export function useLayerSession(work: Work, layer: Layer): DrawingSession {
  const revision = useWork(work, (state) => state.revision);
  const tool = useRef<Tool | null>(null);
  const session = useMemo(() => {
    const fresh = new LayerSession(work, layer);
    const { play } = fresh.context;
    if (tool.current && toolsOf(play).includes(tool.current)) fresh.tool(tool.current);
    return { revision, fresh };
  }, [work, layer, revision]).fresh;
  useEffect(
    () =>
      session.store.subscribe((now, before) => {
        tool.current = now.editor.tool;
        if (now.editor.design !== before.editor.design) work.draw(layer, now.editor.design);
      }),
    [session, work, layer],
  );
  return session;
}
