import { CircleCheck, Info, OctagonAlert, TriangleAlert } from 'lucide-react';
import type { ReactNode } from 'react';
import { Icon } from './icon.tsx';
import './parts.css';

export type Tone = 'plain' | 'met' | 'caution' | 'stops';

const ICONS = { plain: Info, met: CircleCheck, caution: TriangleAlert, stops: OctagonAlert } as const;

export interface NoticeProps {
  readonly tone?: Tone;
  readonly title?: string;
  /** `alert` is read out at once; leave it out for what was there when the page came. */
  readonly role?: 'alert' | 'status';
  readonly children?: ReactNode;
}

/** One or two sentences that must not be overlooked, at the place that they are about. */
export function Notice({ tone = 'plain', title, role, children }: NoticeProps) {
  return (
    <div className="notice" data-tone={tone} role={role}>
      <Icon of={ICONS[tone]} size={20} />
      <div className="notice-text">
        {title !== undefined && <strong className="notice-title">{title}</strong>}
        {children}
      </div>
    </div>
  );
}
