import { Copy, Link2, Undo2 } from 'lucide-react';
import { useCallback, useEffect, useState } from 'react';
import { type LinkAsked, type LinkInList, type MadeLink, UNDO_MS } from '../../shared/wire/desks.ts';
import type { WireRefusal } from '../../shared/wire/protocol.ts';
import { useAnnounce } from '../parts/announcer.tsx';
import { Button } from '../parts/button.tsx';
import { useDates } from '../parts/dates.ts';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { giveBackLink, listLinks, makeLink, revokeLink } from './session.ts';
import { useWholeWords } from './whole-words.ts';
import './links.css';

export interface LinkListProps {
  readonly asked: LinkAsked;
  readonly note: string;
  readonly none: string;
  readonly make: string;
}

/** Links of one kind: what there is, one more, one less. */
export function LinkList({ asked, note, none, make }: LinkListProps) {
  const { links } = useWholeWords().desk;
  const { list, load, refusal, setRefusal } = useLinks(asked);
  const [made, setMade] = useState<MadeLink | null>(null);
  const [busy, setBusy] = useState(false);
  const add = async () => {
    setBusy(true);
    const answer = await makeLink(asked);
    setBusy(false);
    setRefusal(answer.ok ? null : answer.refusal);
    if (answer.ok) setMade(answer.value);
    await load();
  };
  return (
    <div className="links">
      <p className="desk-quiet">{note}</p>
      {list === null && refusal === null && <p className="desk-quiet">{links.loading}</p>}
      {list?.length === 0 && <p>{none}</p>}
      <ul className="links-list">
        {list?.map((link) => (
          <LinkRow key={link.id} link={link} onChange={load} onRefused={setRefusal} />
        ))}
      </ul>
      {made && list?.some(({ id, revokedAt }) => id === made.link.id && revokedAt === null) && (
        <NewLink made={made} />
      )}
      <Button icon={<Icon of={Link2} />} disabled={busy} onClick={() => void add()}>
        {busy ? links.making : make}
      </Button>
      <Refused refusal={refusal} />
    </div>
  );
}

function useLinks(asked: LinkAsked) {
  const [list, setList] = useState<readonly LinkInList[] | null>(null);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const room = asked.kind === 'room' ? asked.room : null;
  const load = useCallback(async () => {
    const answer = await listLinks();
    if (answer.ok) setList(answer.value.filter((link) => link.room === room));
    else setRefusal(answer.refusal);
  }, [room]);
  useEffect(() => void load(), [load]);
  return { list, load, refusal, setRefusal };
}

interface LinkRowProps {
  readonly link: LinkInList;
  readonly onChange: () => Promise<void>;
  readonly onRefused: (refusal: WireRefusal | null) => void;
}

/** A revoked link stays in its row for as long as it can be given back. */
function LinkRow({ link, onChange, onRefused }: LinkRowProps) {
  const { links, undo } = useWholeWords().desk;
  const dates = useDates();
  const revoked = link.revokedAt !== null;
  const gone = link.kind === 'desk' ? links.revokedDesk : links.revoked;
  useEffect(() => {
    if (!revoked) return;
    const timer = setTimeout(() => void onChange(), UNDO_MS);
    return () => clearTimeout(timer);
  }, [revoked, onChange]);
  const press = async () => {
    const answer = await (revoked ? giveBackLink(link.id) : revokeLink(link.id));
    onRefused(answer.ok ? null : answer.refusal);
    await onChange();
  };
  return (
    <li>
      <span role="status">
        <strong>{link.word}</strong>{' '}
        <span className="desk-quiet">{revoked ? gone : links.row(dates.moment(link.madeAt))}</span>
      </span>
      <Button
        icon={revoked && <Icon of={Undo2} />}
        aria-label={revoked ? links.giveBackThis(link.word) : links.revokeThis(link.word)}
        onClick={() => void press()}
      >
        {revoked ? undo.back : links.revoke}
      </Button>
    </li>
  );
}

/** The one time that the secret is shown. */
function NewLink({ made }: { readonly made: MadeLink }) {
  const { links } = useWholeWords().desk;
  const announce = useAnnounce();
  const [copied, setCopied] = useState(false);
  const copy = async () => {
    await navigator.clipboard.writeText(made.address);
    setCopied(true);
    announce(links.copied);
  };
  return (
    <div className="links-new" role="status">
      <p>
        <strong>{links.made(made.link.word)}</strong> {links.once}
      </p>
      <input
        readOnly
        value={made.address}
        aria-label={links.address(made.link.word)}
        onFocus={(event) => event.target.select()}
      />
      {/* The clipboard exists on https and on this machine only. */}
      {navigator.clipboard && (
        <Button icon={<Icon of={Copy} />} onClick={() => void copy()}>
          {copied ? links.copied : links.copy}
        </Button>
      )}
    </div>
  );
}
