import { describe, expect, it } from 'vitest';
import { Addresses } from '../../../server/addresses.ts';

const WIFI = { ip: '192.168.1.20', network: 'Wi-Fi' };
const CABLE = { ip: '10.0.0.7', network: 'eth0' };

function at(own: { ip: string; network: string }[], more: { publicUrl?: string; host?: string } = {}) {
  const addresses = new Addresses({ scheme: 'http', own: () => own, ...more });
  addresses.listenAt(4310);
  return addresses;
}

describe('Addresses', () => {
  it('names every network of this machine and joins by the first', () => {
    expect(at([WIFI, CABLE]).now()).toEqual({
      join: 'http://192.168.1.20:4310',
      fixed: false,
      all: [
        { address: 'http://192.168.1.20:4310', network: 'Wi-Fi' },
        { address: 'http://10.0.0.7:4310', network: 'eth0' },
      ],
    });
  });

  it('joins by the chosen one, as long as this machine has it', () => {
    const own = [WIFI, CABLE];
    const addresses = at(own);
    expect(addresses.choose('http://10.0.0.7:4310')).toBe(true);
    expect(addresses.now().join).toBe('http://10.0.0.7:4310');
    own.pop();
    expect(addresses.now().join).toBe('http://192.168.1.20:4310');
  });

  it('lets no address be chosen that is not one of them', () => {
    expect(at([WIFI]).choose('http://elsewhere.example')).toBe(false);
  });

  it('PUBLIC_URL comes first and leaves no choice', () => {
    const addresses = at([WIFI, CABLE], { publicUrl: 'https://harbour.example/' });
    expect(addresses.now()).toMatchObject({ join: 'https://harbour.example', fixed: true });
    expect(addresses.choose('http://10.0.0.7:4310')).toBe(false);
    expect(addresses.now().join).toBe('https://harbour.example');
  });

  it('the one address that the server listens on is all there is', () => {
    expect(at([WIFI], { host: '10.9.9.9' }).now().all).toEqual([
      { address: 'http://10.9.9.9:4310', network: '' },
    ]);
  });

  it('without any network only this machine itself is left', () => {
    expect(at([]).now().join).toBe('http://localhost:4310');
  });
});
