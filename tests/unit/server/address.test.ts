import type { Socket } from 'node:net';
import { describe, expect, it } from 'vitest';
import { addressOf } from '../../../server/seats/address.ts';

const counted = (remoteAddress: string | undefined) => addressOf({ socket: { remoteAddress } as Socket });

// 192.0.2.0/24 and 2001:db8::/32 are for documentation (RFC 5737, RFC 3849).
describe('addressOf', () => {
  it.each([
    ['192.0.2.7', '192.0.2.7'],
    ['::ffff:192.0.2.7', '192.0.2.7'],
    ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2'],
    ['2001:DB8:1:2::9', '2001:db8:1:2'],
    ['2001:db8::1', '2001:db8:0:0'],
    ['fe80::1%eth0', 'fe80:0:0:0'],
    ['::1', '0:0:0:0'],
    [undefined, 'unknown'],
  ])('%s is counted as %s', (address, expected) => expect(counted(address)).toBe(expected));
});
