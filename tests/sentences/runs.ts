import type { Action } from '../../shared/documents/kit.ts';
import { CAUSES, type Odds, WEATHERS } from '../../shared/documents/outlook.ts';
import { FINDING_VARIANTS, type Finding, REMEDIES, RULE_IDS } from '../../shared/documents/verdict.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { each } from './each.ts';

const SEVERITIES = ['stops', 'may-stop', 'untidy'] as const;

export function ofFindings({ findings }: Wording): void {
  const place = { at: { x: 1, y: 1 } };
  for (const rule of RULE_IDS)
    for (const variant of [undefined, ...FINDING_VARIANTS])
      for (const severity of SEVERITIES)
        for (const measured of [3.4, -2, Number.POSITIVE_INFINITY])
          for (const allowed of [0, 12])
            findings.said({ rule, variant, severity, measured, allowed, place } as unknown as Finding);
  for (const code of REMEDIES) findings.remedy({ remedy: { code } } as unknown as Finding);
}

export const ACTIONS: readonly Action[] = [
  { kind: 'pace-by', steps: 1 },
  { kind: 'pace-by', steps: -2 },
  { kind: 'pace-by', steps: 0 },
  { kind: 'pace-to', pace: 'creep' },
  { kind: 'pace-for', pace: 'fast', time: 3 },
  { kind: 'choose', way: 'left' },
  { kind: 'turn-back' },
  { kind: 'wait', time: 2 },
  { kind: 'signal', time: 1 },
  { kind: 'park' },
  { kind: 'nothing' },
];

export function ofRuns(words: Wording): void {
  const { actions, outlook } = words;
  each(ACTIONS, actions.name);
  each(['creep', 'steady', 'brisk', 'fast'] as const, (pace) => [actions.pace(pace), actions.already(pace)]);
  each(['left', 'straight', 'right'] as const, actions.way);
  each(['mark', 'chance', 'straight', 'only'] as const, actions.decided);
  each(
    ['finished', 'parked', 'stopped', 'lost', 'off-paper', 'time-up', 'never-started'] as const,
    actions.ending,
  );
  each([0, 0.0001, 0.35, 0.9999, 1], outlook.percent);
  each(WEATHERS, outlook.weather);
  each(CAUSES, outlook.cause);
  each(['track', 'runs', 'doubtful'] as const, outlook.basis);
  const at = { x: 1, y: 1 };
  const odds: Odds = {
    start: 'start',
    basis: 'track',
    endings: [
      { ending: 'finished', at, probability: 0.5 },
      { ending: 'stopped', at, probability: 0.3 },
    ],
    finish: 0.5,
    endless: 0.2,
    inTime: { limit: 60, finish: 0.5, meanTime: 6.2 },
    open: [],
  };
  each([odds, { ...odds, inTime: { ...odds.inTime, finish: 1 } }], (one) => [
    outlook.endings(one),
    outlook.inTime(one),
  ]);
  outlook.arms({
    at,
    heading: at,
    met: 1,
    arms: [
      { way: 'left', chance: 0.5, finish: 1 },
      { way: 'right', chance: 0.25, finish: 0 },
      { way: 'straight', chance: 0.25, finish: 0.3 },
    ],
  });
  outlook.steady({ weather: 'stormy', same: 18, of: 20, interval: { low: 0.7, high: 0.97 } } as Parameters<
    typeof outlook.steady
  >[0]);
}
