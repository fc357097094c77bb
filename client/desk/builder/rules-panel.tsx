import { WandSparkles } from 'lucide-react';
import { useMemo } from 'react';
import { type Challenge, VARIANTS } from '../../../shared/documents/challenge.ts';
import { WEATHERS } from '../../../shared/documents/outlook.ts';
import { type Texts, textIn } from '../../../shared/documents/values.ts';
import { variantOf } from '../../../shared/library/variants.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { Miniature } from '../../parts/miniature.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { Choose, LengthField, NumberField, TextField } from './inputs.tsx';
import { useOtherWords } from './other-words.ts';
import { useChallenge, type Work } from './work.ts';

/** As a file holds texts: what somebody writes speaks one language. */
const written = (text: string): Texts => ({ en: text });
const LONGEST_TEXT = 200;

const PLAYS = ['draw', 'fill-in', 'mend', 'predict'] as const;

/** How the challenge is played: sentence, way to play, limits, weather, variants, and notes for whoever teaches it. */
export function RulesPanel({ work }: { readonly work: Work }) {
  const { builder, desk, outlook } = useWholeWords();
  const { rules } = builder;
  const challenge = useChallenge(work);
  const locale = useLocale();
  const put = (change: Partial<Challenge>, what: string | null = null) =>
    work.change({ ...challenge, ...change }, what);
  return (
    <div className="builder-panel">
      <h2>{rules.title}</h2>
      <TextField
        label={rules.sentence}
        value={textIn(challenge.sentence, locale)}
        most={LONGEST_TEXT}
        lines={3}
        onChange={(text) => work.change({ ...withoutMirror(challenge), sentence: written(text) }, 'sentence')}
        onDone={work.settle}
      />
      <FromGoals work={work} />
      <Choose
        label={rules.play}
        value={challenge.play}
        options={PLAYS.map((play) => [play, desk.briefing.play(play)] as const)}
        onChange={(play) => put({ play })}
      />
      <p className="desk-quiet">{desk.briefing.playSentence(challenge.play)}</p>
      <Limits challenge={challenge} work={work} />
      <div className="formula-fields">
        <Choose
          label={rules.starts}
          value={challenge.starts.length > 1 ? 'both' : challenge.starts[0]!}
          options={(['start', 'finish', 'both'] as const).map((who) => [who, rules.from(who)] as const)}
          onChange={(who) => put({ starts: who === 'both' ? ['start', 'finish'] : [who] })}
        />
        <Choose
          label={rules.weather}
          value={challenge.weather ?? 'calm'}
          options={WEATHERS.map((weather) => [weather, outlook.weather(weather)] as const)}
          onChange={(weather) => put({ weather })}
        />
      </div>
      <Variants work={work} />
      <Notes work={work} />
    </div>
  );
}

/** A sentence for the mirrored sheet belongs to the sentence that it was written for. */
function withoutMirror({ mirroredSentence: _, ...rest }: Challenge): Challenge {
  return rest;
}

/** As many of the sentences, from the first on, as there is room for. */
function wholeSentences(sentences: readonly string[]): string {
  const parts = sentences.map((_, i) => sentences.slice(0, i + 1).join(' '));
  return parts.findLast((text) => text.length <= LONGEST_TEXT) ?? '';
}

/** What children read made of what the goals say, in both languages. */
function FromGoals({ work }: { readonly work: Work }) {
  const { rules } = useWholeWords().builder;
  const words = useWholeWords();
  const other = useOtherWords();
  const locale = useLocale();
  const challenge = useChallenge(work);
  const { goals, sheet } = challenge;
  if (goals.length === 0 || !other) return null;
  const said = (of: typeof words) =>
    wholeSentences(
      goals.filter((goal) => goal.must).map((goal) => of.goals.sentence(goal.formula, sheet, goal.start)),
    );
  const [en, es] = locale === 'en' ? [said(words), said(other)] : [said(other), said(words)];
  if (en === '' || es === '') return null;
  const write = () => work.change({ ...withoutMirror(challenge), sentence: { en, es } });
  return (
    <Button icon={<Icon of={WandSparkles} />} onClick={write}>
      {rules.fromGoals}
    </Button>
  );
}

function Limits({ challenge, work }: { readonly challenge: Challenge; readonly work: Work }) {
  const { rules, wish } = useWholeWords().builder;
  const { limits, play } = challenge;
  const put = (change: Partial<Record<'ink' | 'marks' | 'time', number | undefined>>) => {
    const now = Object.entries({ ...limits, ...change }).filter(([, value]) => value !== undefined);
    work.change({ ...challenge, limits: Object.fromEntries(now) as Challenge['limits'] }, 'limits');
  };
  return (
    <div className="formula-fields">
      <NumberField
        label={rules.time}
        value={limits.time}
        least={5}
        most={600}
        step={5}
        unit={wish.seconds}
        onChange={(time = limits.time) => put({ time })}
      />
      {play !== 'predict' && (
        <NumberField
          label={rules.marks}
          value={limits.marks}
          least={0}
          most={99}
          empty
          onChange={(marks) => put({ marks: marks === undefined ? undefined : Math.round(marks) })}
        />
      )}
      {(play === 'draw' || play === 'mend') && (
        <LengthField
          label={rules.ink}
          value={limits.ink}
          most={20_000}
          empty
          onChange={(ink) => put({ ink })}
        />
      )}
    </div>
  );
}

/** What neighbouring tables get where sheets vary. */
function Variants({ work }: { readonly work: Work }) {
  const { rules } = useWholeWords().builder;
  const challenge = useChallenge(work);
  const locale = useLocale();
  const made = useMemo(
    () => VARIANTS.map((variant) => ({ variant, on: variantOf(challenge, variant) })),
    [challenge],
  );
  const mirrored = challenge.mirroredSentence;
  const write = (text: string) =>
    work.change(
      text.trim() === '' ? withoutMirror(challenge) : { ...challenge, mirroredSentence: written(text) },
      'mirrored',
    );
  return (
    <section className="builder-section">
      <h3>{rules.variants}</h3>
      <p className="desk-quiet">{rules.variantsNote}</p>
      <div className="builder-variants">
        {made.map(({ variant, on }) => (
          <figure key={variant}>
            {on ? (
              <Miniature sheet={on.sheet} kit={on.kit} drawing={on.begin?.drawing} />
            ) : (
              <p>{rules.noVariant}</p>
            )}
            <figcaption>{rules.variant(variant)}</figcaption>
          </figure>
        ))}
      </div>
      <TextField
        label={rules.mirrored}
        value={mirrored ? textIn(mirrored, locale) : ''}
        most={LONGEST_TEXT}
        lines={2}
        empty
        onChange={write}
        onDone={work.settle}
      />
    </section>
  );
}

const NOTES = ['teaches', 'mistakes', 'ask'] as const;

/** For whoever teaches it: three texts, all or none; one that is not written yet is a dash. */
function Notes({ work }: { readonly work: Work }) {
  const { desk, builder } = useWholeWords();
  const challenge = useChallenge(work);
  const locale = useLocale();
  const { note } = challenge;
  const textOf = (key: (typeof NOTES)[number]) => {
    const text = note ? textIn(note[key], locale) : '';
    return text === NOT_WRITTEN ? '' : text;
  };
  const write = (key: (typeof NOTES)[number], text: string) => {
    const blank = {
      teaches: written(NOT_WRITTEN),
      mistakes: written(NOT_WRITTEN),
      ask: written(NOT_WRITTEN),
    };
    const now = { ...blank, ...note, [key]: written(text.trim() === '' ? NOT_WRITTEN : text) };
    const { note: _, ...rest } = challenge;
    const isBlank = NOTES.every((each) => now[each].en === NOT_WRITTEN);
    work.change(isBlank ? rest : { ...rest, note: now }, `note ${key}`);
  };
  return (
    <section className="builder-section">
      <h3>{builder.rules.notes}</h3>
      {NOTES.map((key) => (
        <TextField
          key={key}
          label={desk.briefing[key]}
          value={textOf(key)}
          most={LONGEST_TEXT}
          lines={2}
          empty
          onChange={(text) => write(key, text)}
          onDone={work.settle}
        />
      ))}
    </section>
  );
}

const NOT_WRITTEN = '–';
