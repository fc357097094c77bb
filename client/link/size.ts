import { type ClientCommand, LIMITS, type WireRefusal } from '../../shared/wire/protocol.ts';

const bytesOf = (value: unknown): number => new TextEncoder().encode(JSON.stringify(value)).length;

/**
 * Refuses what the server would not read. An oversize message otherwise looks like a dropped link and
 * would be sent again for ever.
 */
export function tooLarge(command: ClientCommand): WireRefusal | null {
  const refuse = (value: unknown, most: number): WireRefusal | null => {
    const bytes = bytesOf(value);
    return bytes > most ? { code: 'too-large', bytes, most } : null;
  };
  const design = command.ask.kind === 'hand-in' ? refuse(command.ask.design, LIMITS.designBytes) : null;
  return design ?? refuse(command, LIMITS.messageBytes);
}
