import type { Kit } from '../../../shared/documents/kit.ts';
import type { RobotFit, Told } from '../../../shared/prep/fit.ts';
import { useWholeWords } from '../whole-words.ts';

interface ResultProps {
  readonly fit: RobotFit;
  readonly kit: Kit;
}

/** What timed runs say, and how sure that is. */
export function FitResult({ fit, kit }: ResultProps) {
  const { fitting, actions } = useWholeWords();
  const { paces, track } = fit;
  if (paces.length === 0) return <p className="desk-quiet">{fitting.noRuns}</p>;
  const { heads } = fitting;
  const alone = paces.every(({ robots }) => robots === 1);
  return (
    <>
      <table className="fit-table">
        <thead>
          <tr>
            {[heads.what, heads.kit, heads.found, heads.error, heads.range, heads.runs].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {paces.map((told) => (
            <ToldRow
              key={told.pace}
              name={fitting.paceNamed(actions.pace(told.pace))}
              before={kit.robot.paces[told.pace]}
              told={told}
              said={fitting.speed}
            />
          ))}
          {track.kind === 'told' && (
            <ToldRow name={fitting.track} before={kit.robot.wheelTrack} told={track} said={fitting.wide} />
          )}
        </tbody>
      </table>
      {alone && <p className="desk-quiet">{fitting.oneRobot}</p>}
      {track.kind === 'open' && <p className="desk-quiet">{fitting.trackOpen}</p>}
      {track.kind === 'not-told' && <p className="desk-quiet">{fitting.trackNot}</p>}
    </>
  );
}

interface RowProps {
  readonly name: string;
  readonly before: number;
  readonly told: Told;
  readonly said: (value: number) => string;
}

function ToldRow({ name, before, told, said }: RowProps) {
  const { fitting } = useWholeWords();
  const { value, spread, runs, robots } = told;
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{said(before)}</td>
      <td>{said(value)}</td>
      {spread ? (
        <>
          <td>{said(spread.error)}</td>
          <td>{fitting.range(said(spread.low), said(spread.high))}</td>
        </>
      ) : (
        <td colSpan={2}>{fitting.tooFew}</td>
      )}
      <td>{fitting.from(runs, robots)}</td>
    </tr>
  );
}
