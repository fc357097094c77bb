import fc from 'fast-check';
import { WEATHERS } from '../../../shared/documents/outlook.ts';
import { HELP_STEPS } from '../../../shared/room/coaching.ts';
import type { RoomCommand } from '../../../shared/room/commands.ts';
import { OWN_SHEETS } from '../../../shared/room/conditions.ts';

/** How the desk has teams helped, and in what they draw. */
export const helpingCommand = (teamId: fc.Arbitrary<string>): fc.Arbitrary<RoomCommand> =>
  fc.oneof(
    fc.record({
      kind: fc.constant('set-help' as const),
      team: teamId,
      step: fc.option(fc.constantFrom(...HELP_STEPS)),
    }),
    fc.record({
      kind: fc.constant('set-help' as const),
      team: fc.constant(null),
      step: fc.constantFrom(...HELP_STEPS),
    }),
    fc.record({ kind: fc.constant('set-gentler' as const), team: teamId, on: fc.boolean() }),
    fc.record({
      kind: fc.constant('set-weather' as const),
      team: fc.option(teamId),
      weather: fc.option(fc.constantFrom(...WEATHERS)),
    }),
    fc.record({
      kind: fc.constant('set-sheet' as const),
      team: teamId,
      sheet: fc.option(fc.constantFrom(...OWN_SHEETS)),
    }),
  );
