const HOUR = 60;
const two = (n: number): string => String(n).padStart(2, '0');

/** A time of day from minutes since midnight, as ISO 8601 writes it: "06:30". */
export const clock = (minutes: number): string => `${two(Math.floor(minutes / HOUR))}:${two(minutes % HOUR)}`;

/** How long, in symbols that are the same everywhere: "2 h 5 min". */
export function lasting(minutes: number): string {
  const hours = Math.floor(minutes / HOUR);
  const rest = minutes % HOUR;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

/** Minutes and seconds left or spent, in ms, as a clock shows them: "7:05". A second that has begun counts. */
export function onClock(ms: number): string {
  const seconds = Math.max(0, Math.ceil(ms / 1000));
  return `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;
}
