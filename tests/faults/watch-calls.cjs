// Loaded into a server's process and its workers before anything else: writes down every way out of it.
const { appendFileSync } = require('node:fs');
const note = (what) => appendFileSync(process.env.WATCH_CALLS, `${what}\n`);
const watch = (holder, name, say) => {
  const original = holder[name];
  holder[name] = function watched(...given) {
    note(say(given));
    return original.apply(this, given);
  };
};
const shown = (given) => JSON.stringify(given[0]) ?? String(given[0]);

note('watching');
watch(require('node:net').Socket.prototype, 'connect', (given) => `connect ${shown(given)}`);
watch(require('node:dgram').Socket.prototype, 'send', () => 'datagram');
watch(require('node:dgram').Socket.prototype, 'connect', () => 'datagram');
const dns = require('node:dns');
for (const holder of [dns, dns.promises, dns.Resolver.prototype, dns.promises.Resolver.prototype]) {
  for (const name of Object.getOwnPropertyNames(holder)) {
    if (/^(lookup|resolve|reverse)/.test(name)) watch(holder, name, (given) => `${name} ${shown(given)}`);
  }
}
const processes = require('node:child_process');
for (const name of ['spawn', 'spawnSync', 'exec', 'execSync', 'execFile', 'execFileSync', 'fork'])
  watch(processes, name, (given) => `${name} ${shown(given)}`);

require('node:module').syncBuiltinESMExports();
