import { networkInterfaces } from 'node:os';
import type { JoinAddress, JoinAddresses } from '../shared/wire/protocol.ts';

interface Own {
  readonly ip: string;
  /** What the system calls the connection, for example `Wi-Fi` or `eth0`. */
  readonly network: string;
}

const PRIVATE = /^(192\.168|10|172\.(1[6-9]|2\d|3[01]))\./;
/** Networks inside this machine, and tunnels: no tablet is there. */
const INSIDE = /^(docker|br-|veth|virbr|vbox|vmnet|vethernet|tun|tap|wg|utun|zt)/i;
const rank = ({ ip, network }: Own): number => (INSIDE.test(network) ? 2 : PRIVATE.test(ip) ? 0 : 1);

/** Where in its networks this machine can be reached by IPv4, the likeliest for tablets first. */
export function lanAddresses(): Own[] {
  const found = Object.entries(networkInterfaces()).flatMap(([network, list]) =>
    (list ?? [])
      .filter((each) => each.family === 'IPv4' && !each.internal)
      .map((each) => ({ ip: each.address, network })),
  );
  return found.sort((a, b) => rank(a) - rank(b));
}

export interface AddressesParts {
  readonly scheme: 'http' | 'https';
  readonly host?: string | undefined;
  readonly publicUrl?: string | undefined;
  /** For tests. */
  readonly own?: () => readonly Own[];
}

const EVERYWHERE = ['0.0.0.0', '::'];

/** What tablets may type, and which of it the QR code carries: PUBLIC_URL, else the desk's choice, else the first. */
export class Addresses {
  readonly #parts: AddressesParts;
  #port = 0;
  #chosen: string | null = null;

  constructor(parts: AddressesParts) {
    this.#parts = parts;
  }

  listenAt(port: number): void {
    this.#port = port;
  }

  /** Asked anew each time: a laptop may join the network after the server has started. */
  all(): JoinAddress[] {
    const { scheme, host, publicUrl, own = lanAddresses } = this.#parts;
    const fixed = host !== undefined && !EVERYWHERE.includes(host) ? [{ ip: host, network: '' }] : own();
    const places = fixed.length > 0 ? fixed : [{ ip: 'localhost', network: '' }];
    const all = places.map(({ ip, network }) => ({ address: `${scheme}://${ip}:${this.#port}`, network }));
    return publicUrl === undefined ? all : [{ address: publicUrl.replace(/\/+$/, ''), network: '' }, ...all];
  }

  now(): JoinAddresses {
    const all = this.all();
    const fixed = this.#parts.publicUrl !== undefined;
    const chosen = fixed ? undefined : all.find(({ address }) => address === this.#chosen);
    return { join: (chosen ?? all[0]!).address, fixed, all };
  }

  /** Says whether `address` is one of them and may be chosen. */
  choose(address: string): boolean {
    const { fixed, all } = this.now();
    if (fixed || !all.some((each) => each.address === address)) return false;
    this.#chosen = address;
    return true;
  }
}
