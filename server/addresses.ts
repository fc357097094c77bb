import { networkInterfaces } from 'node:os';

/** Where in the network this machine can be reached: its own IPv4 addresses, those of the local network first. */
export function lanAddresses(): string[] {
  const found = Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter((address) => address.family === 'IPv4' && !address.internal)
    .map((address) => address.address);
  const isPrivate = (address: string) => /^(192\.168|10|172\.(1[6-9]|2\d|3[01]))\./.test(address);
  return [...found.filter(isPrivate), ...found.filter((address) => !isPrivate(address))];
}
