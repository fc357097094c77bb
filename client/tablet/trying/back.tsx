import { ArrowLeft } from 'lucide-react';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';

export function Back({ onBack, words }: { readonly onBack: () => void; readonly words: string }) {
  return (
    <Button className="trying-back" icon={<Icon of={ArrowLeft} size={24} />} onClick={onBack}>
      {words}
    </Button>
  );
}
