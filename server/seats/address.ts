import type { IncomingMessage } from 'node:http';

const MAPPED = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i;
const SUBNET_GROUPS = 4;

const LOOPBACK = /^(::1|(::ffff:)?127(\.\d+){3})$/;

/** Whether a connection came from this machine itself. */
export const isLoopback = (address: string | undefined): boolean => LOOPBACK.test(address ?? '');

/** The subnet (64 bits) of an IPv6 address, inside which one device may have as many addresses as it likes. */
function subnetOf(address: string): string {
  const [front = '', back] = address.split('%')[0]!.toLowerCase().split('::');
  const head = front === '' ? [] : front.split(':');
  const tail = back === undefined || back === '' ? [] : back.split(':');
  const zeros = new Array<string>(Math.max(0, 8 - head.length - tail.length)).fill('0');
  return [...head, ...zeros, ...tail].slice(0, SUBNET_GROUPS).join(':');
}

/** The address of a request's device, counted from the right past so many balancers that are ours. */
function deviceAddress({ socket, headers }: Asking, balancers: number): string | undefined {
  const before = [headers['x-forwarded-for'] ?? []].flat().join();
  const way = [...before.split(','), socket.remoteAddress ?? ''].map((one) => one.trim()).filter(Boolean);
  // What stands further left anybody may have written.
  return way[Math.max(0, way.length - 1 - balancers)];
}

type Asking = Pick<IncomingMessage, 'socket' | 'headers'>;
export type AddressOf = (request: Asking) => string;

/**
 * What guesses are counted by: an IPv4 address, or the subnet of an IPv6 one. It is kept in memory
 * as long as the count is, and written nowhere. Behind balancers it is the address that they name.
 */
export const addressBehind =
  (balancers: number): AddressOf =>
  (request) => {
    const address = deviceAddress(request, balancers) ?? 'unknown';
    const mapped = MAPPED.exec(address)?.[1];
    if (mapped !== undefined) return mapped;
    return address.includes(':') ? subnetOf(address) : address;
  };
