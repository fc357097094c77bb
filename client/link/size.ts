import {
  type ClientAsk,
  type ClientCommand,
  type LatestUp,
  LIMITS,
  type WireRefusal,
} from '../../shared/wire/protocol.ts';

const bytesOf = (value: unknown): number => new TextEncoder().encode(JSON.stringify(value)).length;

function refuse(value: unknown, most: number): WireRefusal | null {
  const bytes = bytesOf(value);
  return bytes > most ? { code: 'too-large', bytes, most } : null;
}

/** What a team has made, where there is such a thing in a message. */
function workIn(message: ClientAsk | LatestUp): unknown {
  if (message.kind === 'hand-in') return message.design;
  if (message.kind === 'hand-in-answers') return message.answers;
  return message.kind === 'draft' ? (message.design ?? message.answers) : null;
}

/**
 * Refuses what the server would not read. An oversize message otherwise looks like a dropped link and
 * would be sent again for ever.
 */
export const tooLarge = (command: ClientCommand): WireRefusal | null =>
  refuse(workIn(command.ask), LIMITS.designBytes) ?? refuse(command, LIMITS.messageBytes);

/** The same of a lossy value, which nobody would answer. */
export const valueTooLarge = (value: LatestUp): WireRefusal | null =>
  refuse(workIn(value), LIMITS.designBytes) ?? refuse(value, LIMITS.messageBytes);
