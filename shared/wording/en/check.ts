import type { Arrivals, CheckReport } from '../../wire/protocol.ts';
import { numbers } from './numbers.ts';

/** The page that is opened on one tablet, and what the desk says of devices that get through or don't. */

/** Above these a class would notice: a tap that is answered late, a page that is long in coming, ms. */
export const SLOW_TRIP = 150;
export const SLOW_PAGE = 4000;

export type Verdict = {
  readonly tone: 'met' | 'caution' | 'stops';
  readonly title: string;
  /** The same as the desk says it. */
  readonly short: string;
  readonly text: string;
};

const length = (ms: number) =>
  ms < 1000 ? `${Math.max(1, Math.round(ms))} ms` : `${numbers.fixed(ms / 1000, 1)} s`;
const ago = (ms: number) =>
  ms < 60_000 ? `${Math.max(1, Math.round(ms / 1000))} s ago` : `${Math.round(ms / 60_000)} min ago`;

function verdict({ roundTripMs, pageMs, live }: CheckReport): Verdict {
  if (!live)
    return {
      tone: 'stops',
      title: 'The page comes through, the live link does not.',
      short: 'The page came through, the live link did not: something in between stops websockets.',
      text: 'Something between this device and the laptop stops websockets, often a filter of the school’s network. Ask for an exception for this address, or use another network.',
    };
  if (roundTripMs > SLOW_TRIP || pageMs > SLOW_PAGE)
    return {
      tone: 'caution',
      title: 'This device gets through, but slowly.',
      short: 'It gets through, but slowly.',
      text: 'A lesson works; pages come late when a class opens them at once. Go nearer to the access point, or let tablets come in a few at a time.',
    };
  return {
    tone: 'met',
    title: 'This device gets through.',
    short: 'It gets through.',
    text: 'It is fast enough for a lesson. What one device can do, others in the same network can do too.',
  };
}

const figures = ({ roundTripMs, pageMs, live }: CheckReport): readonly (readonly [string, string])[] => [
  ['An answer takes', length(roundTripMs)],
  ['The page takes', length(pageMs)],
  ['Live link', live ? 'opens' : 'does not open'],
];

/** What the desk says as long as no team is in the room. */
const arrived = ({ visits, lastAgo, check }: Arrivals): string | null => {
  if (check)
    return `A device made the check ${ago(check.ago)}. ${verdict(check).short} An answer took ${length(check.roundTripMs)}, the page ${length(check.pageMs)}.`;
  return lastAgo === null
    ? null
    : `Devices get through: ${numbers.counted(visits, 'visit', 'visits')}, the last one ${ago(lastAgo)}. What is missing is the room word.`;
};

export const check = {
  title: 'Does this device get through?',
  measuring: 'Measuring the way to the laptop',
  again: 'Measure again',
  told: 'The desk shows this too.',
  gone: {
    title: 'The laptop has stopped answering.',
    text: 'Look whether the server still runs and both are still in the same network, then measure again.',
  },
  verdict,
  figures,
  desk: {
    trouble: 'No tablet gets through?',
    none: 'For a minute no other device has reached this machine. Three causes are likely:',
    causes: [
      {
        title: 'Another network.',
        text: 'Tablet and this machine must be in the same one. Look at the name of the network on both.',
      },
      {
        title: 'Devices kept apart.',
        text: 'Many school and guest networks let devices reach the internet but not one another. Ask for one without that, or open a hotspot on a phone or on this machine.',
      },
      {
        title: 'A firewall.',
        text: 'This machine may ask whether it may be reached: allow it for private networks. Where rules are managed, the port must be opened.',
      },
    ],
    try: (address: string) => `To find out which: open ${address} in the browser of one tablet.`,
    arrived,
    chooseAddress: 'Address in the code',
    chooseNote: 'Choose the network in which the tablets are.',
    addressNow: (host: string) => `The code leads to ${host} now.`,
    place: (host: string, network: string) => (network === '' ? host : `${host} (${network})`),
  },
};
