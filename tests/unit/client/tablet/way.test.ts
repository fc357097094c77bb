import { expect, it } from 'vitest';
import { movedWay } from '../../../../client/tablet/build/way.ts';
import { EMPTY_DESIGN } from '../../../../shared/documents/design.ts';
import { designOn } from '../../../../shared/library/variants.ts';
import { challengeOf } from '../../../disturbed.ts';

it('movedWay moves every drawing on the way back and forth, and keeps their order', () => {
  const challenge = challengeOf('one-fast-stretch');
  const model = challenge.model!;
  const bare = { ...model, drawing: { ...model.drawing, marks: [] } };
  const way = {
    past: { design: bare, before: { design: EMPTY_DESIGN, before: null } },
    future: { design: model, before: { design: bare, before: null } },
  };
  const move = (design: typeof model) => designOn(null, 'turned', challenge, design);
  expect(movedWay(way, move)).toEqual({
    past: { design: move(bare), before: { design: EMPTY_DESIGN, before: null } },
    future: { design: move(model), before: { design: move(bare), before: null } },
  });
});
