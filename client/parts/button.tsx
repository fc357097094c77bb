import type { ButtonHTMLAttributes, ReactNode } from 'react';
import './parts.css';

export interface ButtonProps extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'type'> {
  readonly look?: 'primary' | 'plain' | 'quiet';
  /** Stands before the words. */
  readonly icon?: ReactNode;
  /** The key that does the same, shown at the end. The page itself listens for it. */
  readonly shortcut?: string;
  readonly type?: 'button' | 'submit';
}

export function Button({ look = 'plain', icon, shortcut, children, type = 'button', ...rest }: ButtonProps) {
  const className = rest.className ? `button ${rest.className}` : 'button';
  return (
    <button
      {...rest}
      type={type}
      className={className}
      data-look={look}
      aria-keyshortcuts={rest['aria-keyshortcuts'] ?? shortcut}
    >
      {icon}
      {children}
      {shortcut !== undefined && (
        <span className="button-key" aria-hidden="true">
          {shortcut}
        </span>
      )}
    </button>
  );
}
