import type { Play } from '../../documents/challenge.ts';

/** How each way is played, in a few words beside each picture. */

const TRIED = 'Try it, then hand in.';

const HOW_TO_PLAY: Readonly<Record<Play, readonly [string, string, string]>> = {
  draw: ['Draw lines for the robot.', 'Put marks on them.', TRIED],
  'fill-in': ['The lines are there.', 'Put marks on them.', TRIED],
  mend: ['Something here is wrong.', 'Change only a little.', TRIED],
  predict: ['Everything is drawn already.', 'What will the robot do?', 'Answer, then hand in.'],
};

export const playing = {
  help: 'Help',
  title: 'How to play',
  /** One for each of the three pictures. */
  how: HOW_TO_PLAY,
};
