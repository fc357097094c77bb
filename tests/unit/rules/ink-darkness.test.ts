import { describe, expect, it } from 'vitest';
import { Kit } from '../../../shared/documents/kit.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { KITS } from '../../kits.ts';
import { drawn, mark, of, PIER, withRules } from './setting.ts';

/** Black line, so that an ink of luminance Y is (Y + 0.05) / 0.05 times as light. */
const kitWith = (color: string, inkLighter?: number): Kit => ({
  ...DEMO_KIT,
  line: { color: '#000000' },
  inks: DEMO_KIT.inks.map((ink) => (ink.id === 'V' ? { ...ink, color } : ink)),
  rules: inkLighter === undefined ? DEMO_KIT.rules : { ...DEMO_KIT.rules, inkLighter },
});
const marked = drawn([PIER], [mark('one', 'pier', 60, 'CA'), mark('two', 'pier', 110, 'AV')]);

describe('R-ink-darkness', () => {
  it('R-ink-darkness is silent for the inks of the sample kits', () => {
    for (const kit of KITS) {
      const [a, b] = kit.inks;
      const all = kit.inks.map(({ id }, i) =>
        mark(`m${i}`, 'pier', 30 + 60 * i, id + (id === a!.id ? b! : a!).id),
      );
      expect(of('R-ink-darkness', drawn([PIER], all), { kit })).toEqual([]);
    }
  });

  it('R-ink-darkness finds an ink less than twice as light as the line, at the first mark that has it', () => {
    // Blue 0000B0 has linear light 0.434 in one channel: 0.0722 · 0.434 = 0.0313, so 1.63 times.
    expect(of('R-ink-darkness', marked, { kit: kitWith('#0000B0') })).toMatchObject([
      {
        measured: 1.63,
        allowed: 2,
        unit: 'ratio',
        severity: 'may-stop',
        place: { kind: 'mark', mark: 'two' },
      },
    ]);
    // Blue 0000FF: 0.0722, so 2.444 times.
    expect(of('R-ink-darkness', marked, { kit: kitWith('#0000FF') })).toEqual([]);
  });

  it('R-ink-darkness says an ink once, and nothing of inks that no own mark has', () => {
    const twice = drawn([PIER], [mark('one', 'pier', 60, 'AV'), mark('two', 'pier', 110, 'AV')]);
    expect(of('R-ink-darkness', twice, { kit: kitWith('#0000B0') })).toHaveLength(1);
    expect(of('R-ink-darkness', drawn([PIER]), { kit: kitWith('#0000B0') })).toEqual([]);
    const given = { lines: [], marks: [mark('given', 'pier', 60, 'AV')] };
    expect(of('R-ink-darkness', drawn([PIER]), { kit: kitWith('#0000B0'), sheet: { given } })).toEqual([]);
  });

  it('R-ink-darkness goes by the kit, where it says so', () => {
    // Red FF0000: 0.2126, so 5.252 times.
    expect(of('R-ink-darkness', marked, { kit: kitWith('#FF0000', 5.25) })).toEqual([]);
    expect(of('R-ink-darkness', marked, { kit: kitWith('#FF0000', 5.26) })).toMatchObject([
      { measured: 5.25, allowed: 5.26 },
    ]);
  });

  it('R-ink-darkness: a kit that was stored without the limit is read, and one with it keeps it', () => {
    for (const kit of [DEMO_KIT, withRules({ inkLighter: 3 })]) {
      const again = parseDocument(Kit, JSON.parse(JSON.stringify(writeDocument(Kit, kit))));
      expect(again.ok && again.value.rules.inkLighter).toBe(kit.rules.inkLighter);
    }
  });
});
