import { numbers } from './numbers.ts';

type What = 'Challenge' | 'Design' | 'Kit';

/** What the judge says on the command line, beside the sentences that pages say too. */
export const report = {
  result: (met: boolean, points: number): string => `${met ? 'Met' : 'Not met'}: ${points} of 100 points`,
  goals: 'Goals',
  inRun: (run: number): string => ` in run ${run}`,
  margin: (value: string): string => `(margin ${value})`,
  points: (got: number, of: number): string => `${got} of ${of} points`,
  answers: 'Teams answer questions here, and no drawing can meet it',
  answer: (answer: string): string => `Answer: ${answer}.`,
  merit: (name: string, points: string, because: string): string => `${name}: ${points} points. ${because}`,
  run: (run: number, of: number): string => (of === 1 ? 'Run' : `Run ${run} of ${of}`),
  from: (start: 'start' | 'finish'): string => `from the ${start}`,
  chance: (percent: string): string => `, chance ${percent} %`,
  ended: (ending: string, time: string): string => `${ending} after ${time}`,
  mark: (mark: string): string => ` (mark ${mark})`,
  reads: (bands: string): string => `reads ${bands}`,
  acts: (place: string, time: string): string => `acts at ${place} after ${time}`,
  actsNot: 'does not act before the end',
  nothing: 'Nothing to look at.',
  things: (n: number): string => `${numbers.counted(n, 'thing', 'things')} to look at`,
  finding: (title: string, place: string, severity: string): string =>
    `${title} at ${place} mm (${severity})`,
  odds: (start: 'start' | 'finish', sure: boolean, endings: string): string =>
    `Odds from the ${start}: ${sure ? 'for sure ' : ''}${endings}`,
  decides: (place: string, come: string, arms: string): string =>
    `At ${place} it decides by itself (${come} come there): ${arms}`,
  steadiness: (said: string): string => `Steadiness: ${said}`,
  strays: (n: number, cause: string, mark: string, place: string): string =>
    `${numbers.counted(n, 'robot', 'robots')} ${cause}${mark} near ${place}`,
  what: (what: What): string => what,
  noFile: (file: string, orKey: boolean): string =>
    `there is no file ${file} that can be read${orKey ? ', and no ready challenge has that key' : ''}.`,
  notJson: (file: string, why: string): string => `${file} is not JSON (${why}).`,
};
