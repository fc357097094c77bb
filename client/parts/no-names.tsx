import { useWords } from './use-words.ts';
import './parts.css';

/** Stands beside every field in which anything can be typed; the field names it as its description. */
export function NoNames({ id }: { readonly id: string }) {
  const { device } = useWords();
  return (
    <p id={id} className="no-names">
      {device.noNames}
    </p>
  );
}
