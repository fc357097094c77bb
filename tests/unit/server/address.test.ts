import type { Socket } from 'node:net';
import { describe, expect, it } from 'vitest';
import { addressBehind } from '../../../server/seats/address.ts';

const counted = (remoteAddress: string | undefined, balancers = 0, forwarded?: string) =>
  addressBehind(balancers)({
    socket: { remoteAddress } as Socket,
    headers: forwarded === undefined ? {} : { 'x-forwarded-for': forwarded },
  });

// 192.0.2.0/24 and 2001:db8::/32 are for documentation (RFC 5737, RFC 3849).
describe('addressBehind no balancer', () => {
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

describe('addressBehind balancers', () => {
  const BALANCER = '192.0.2.1';

  it('does not believe what a device says of itself', () => {
    expect(counted('192.0.2.7', 0, '192.0.2.99')).toBe('192.0.2.7');
    expect(counted(BALANCER, 1, '192.0.2.99, 192.0.2.7')).toBe('192.0.2.7');
  });
  it('looks past as many as there are', () => {
    expect(counted(BALANCER, 1, '192.0.2.7')).toBe('192.0.2.7');
    expect(counted(BALANCER, 2, '192.0.2.7, 192.0.2.2')).toBe('192.0.2.7');
    expect(counted(BALANCER, 1, '2001:db8:1:2::9')).toBe('2001:db8:1:2');
  });
  it('falls back to the first that is named', () => {
    expect(counted(BALANCER, 1)).toBe(BALANCER);
    expect(counted(BALANCER, 3, '192.0.2.7')).toBe('192.0.2.7');
  });
});
