import { CircleCheck, CircleX, Hourglass, RotateCcw, Square, TriangleAlert } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Difficulty } from '../../../shared/documents/fresh.ts';
import type { Misread } from '../../../shared/documents/misread.ts';
import type { ChallengeProblem } from '../../../shared/documents/refusal.ts';
import { textIn } from '../../../shared/documents/values.ts';
import type { ParResult } from '../../../shared/search/par.ts';
import { inkOf } from '../../../shared/track/ink-length.ts';
import { Button } from '../../parts/button.tsx';
import { Icon, type IconShape } from '../../parts/icon.tsx';
import { Miniature } from '../../parts/miniature.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import type { Search } from './searching.ts';
import { useChallenge, type Work } from './work.ts';

export interface FoundProps {
  readonly work: Work;
  readonly search: Search;
}

/** Drawings that a longer search goes through. */
const LONGER = 2_000_000;

type Tone = 'met' | 'caution' | 'stops' | 'busy';
const ICONS: Readonly<Record<Tone, IconShape>> = {
  met: CircleCheck,
  caution: TriangleAlert,
  stops: CircleX,
  busy: Hourglass,
};

interface Verdict {
  readonly tone: Tone;
  readonly said: string;
}

/** The one sentence that says whether it can be met. */
function useVerdict(challenge: Challenge, { found, state }: Search): Verdict {
  const words = useWholeWords();
  const { builder, numbers } = words;
  const said = builder.found;
  const { problems, own, par } = found;
  if (problems && problems.length > 0) return { tone: 'caution', said: said.notReady };
  if (par?.kind === 'par') {
    const { lines, marks } = par.design.drawing;
    const sentence =
      lines.length === 0
        ? said.met(marks.length)
        : said.metByInk(numbers.length(inkOf(par.design.drawing)), marks.length);
    return { tone: 'met', said: sentence };
  }
  if (par?.kind === 'impossible') return { tone: 'stops', said: said.cannot };
  if (par?.kind === 'nothing-to-draw') return { tone: 'met', said: said.asks };
  if (own?.met) return { tone: 'met', said: own.steady ? said.ownMeets : said.ownUnsteady };
  if (par?.kind === 'open') {
    const draws = challenge.play === 'draw' || challenge.play === 'mend';
    if (own) return { tone: 'stops', said: said.ownFails };
    return { tone: 'caution', said: draws ? said.needsOwn : said.open(numbers.short(par.searched, 0)) };
  }
  if (state === 'stopped') return { tone: 'caution', said: said.stopped };
  return { tone: 'busy', said: state === 'still-looking' ? said.stillLooking : said.looking };
}

/** In one line, under the sheet. */
export function FoundLine({ work, search, children }: FoundProps & { readonly children?: ReactNode }) {
  const { found: words } = useWholeWords().builder;
  const challenge = useChallenge(work);
  const { tone, said } = useVerdict(challenge, search);
  const { found, state } = search;
  const works = state === 'looking' || state === 'still-looking';
  const first = found.problems?.[0];
  return (
    <footer className="builder-foot">
      <p className="builder-found" data-tone={tone} role="status">
        <Icon of={ICONS[tone]} size={22} />
        <span>
          {said} {first && <ProblemWords problem={first} />}
          {works && state === 'still-looking' && tone !== 'busy' && ` ${words.stillLooking} …`}
        </span>
      </p>
      {found.difficulty && <p className="desk-quiet">{words.score(found.difficulty.score)}</p>}
      {state === 'still-looking' && (
        <Button icon={<Icon of={Square} />} onClick={search.stop}>
          {words.stop}
        </Button>
      )}
      {state === 'stopped' && (
        <Button icon={<Icon of={RotateCcw} />} onClick={() => search.again(null)}>
          {words.goOn}
        </Button>
      )}
      {children}
    </footer>
  );
}

function ProblemWords({ problem }: { readonly problem: ChallengeProblem }) {
  const { builder, judging } = useWholeWords();
  const [part, at] = problem.path;
  const { found, lines } = builder;
  const where = {
    goals: typeof at === 'number' ? `${found.goal(at + 1)} ` : '',
    begin: `${lines.layer('begin')}: `,
    model: `${lines.layer('own')}: `,
  }[String(part)];
  return `${where ?? ''}${judging.challengeProblem(problem.code)}`;
}

/** All that is known of the challenge: par or proof, how hard it is, which mistakes it shows. */
export function FoundPanel({ work, search }: FoundProps) {
  const words = useWholeWords().builder.found;
  const challenge = useChallenge(work);
  const { problems = [], own, par, difficulty, misread } = search.found;
  const { tone, said } = useVerdict(challenge, search);
  const numbered = problems.map((problem, at) => ({ problem, at }));
  const ownSays = own && (own.met ? (own.steady ? words.ownMeets : words.ownUnsteady) : words.ownFails);
  return (
    <div className="builder-panel">
      <h2>{words.title}</h2>
      <p className="builder-found" data-tone={tone}>
        <Icon of={ICONS[tone]} size={22} />
        <strong>{said}</strong>
      </p>
      {problems.length > 0 && (
        <ul className="builder-problems">
          {numbered.map(({ problem, at }) => (
            <li key={at}>
              <ProblemWords problem={problem} />
            </li>
          ))}
        </ul>
      )}
      {ownSays && ownSays !== said && <p>{ownSays}</p>}
      {par && <ParWords par={par} challenge={challenge} work={work} search={search} />}
      {difficulty && <Hard difficulty={difficulty} />}
      {misread && <Mistakes misread={misread} challenge={challenge} />}
    </div>
  );
}

interface ParWordsProps extends FoundProps {
  readonly par: ParResult;
  readonly challenge: Challenge;
}

function ParWords({ par, challenge, work, search }: ParWordsProps) {
  const { builder, par: words } = useWholeWords();
  const { found } = builder;
  if (par.kind === 'impossible')
    return (
      <div className="builder-problems">
        {par.why.map((why) => (
          <p key={JSON.stringify(why)}>{words.impossible(why)}</p>
        ))}
        <p className="desk-quiet">{words.ofThisModel}</p>
      </div>
    );
  if (par.kind === 'open' && challenge.play !== 'draw')
    return (
      <Button icon={<Icon of={RotateCcw} />} onClick={() => search.again(LONGER)}>
        {found.lookLonger}
      </Button>
    );
  if (par.kind !== 'par') return null;
  const isOwn = JSON.stringify(par.design.drawing) === JSON.stringify(challenge.model?.drawing);
  return (
    <>
      <p>{words.proof(par.proof)}</p>
      {!isOwn && (
        <figure className="builder-drawing">
          <Miniature sheet={challenge.sheet} kit={challenge.kit} drawing={par.design.drawing} />
          <figcaption>{found.drawing}</figcaption>
          <Button onClick={() => work.change({ ...challenge, model: par.design })}>{found.take}</Button>
        </figure>
      )}
    </>
  );
}

function Hard({ difficulty }: { readonly difficulty: Difficulty }) {
  const { found } = useWholeWords().builder;
  return (
    <section className="builder-section">
      <h3>{found.hard}</h3>
      <p>
        <strong>{found.score(difficulty.score)}.</strong> {found.counts(difficulty)} {found.slack(difficulty)}{' '}
        {difficulty.searched > 0 && found.searched(difficulty)}
      </p>
      <p className="desk-quiet">{found.how}</p>
    </section>
  );
}

interface MistakesProps {
  readonly misread: readonly Misread[];
  readonly challenge: Challenge;
}

function Mistakes({ misread, challenge }: MistakesProps) {
  const { found } = useWholeWords().builder;
  const locale = useLocale();
  const nameOf = (id: string) => {
    const ink = challenge.kit.inks.find((each) => each.id === id);
    return ink ? textIn(ink.name, locale) : id;
  };
  const namesOf = ({ inks }: Misread): [string, string] | undefined =>
    inks && [nameOf(inks[0]), nameOf(inks[1])];
  return (
    <section className="builder-section">
      <h3>{found.mistakes}</h3>
      <ul className="builder-misread">
        {misread.map((one) => (
          <li key={one.misreading}>
            <p>
              <strong>{found.misreading(one.misreading, namesOf(one))}</strong> {found.misread(one)}
            </p>
            {one.design && (
              <Miniature sheet={challenge.sheet} kit={challenge.kit} drawing={one.design.drawing} />
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
