import { ArrowLeft, Check, Minus, Plus } from 'lucide-react';
import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { CARD, PX_PER_MM } from '../../parts/glass.ts';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';

/** Steps of the picture's width, CSS pixels: a tenth of a millimetre or so. */
const STEP = 0.5;
const LEAST = Math.ceil(PX_PER_MM.least * CARD.w);
const MOST = Math.floor(PX_PER_MM.most * CARD.w);

export interface CardPageProps {
  /** What was found before. */
  readonly pxPerMm: number | undefined;
  readonly onUse: (pxPerMm: number) => void;
  readonly onBack: () => void;
}

/** A picture of a card that is made as wide as a real one lying on it. */
export function CardPage({ pxPerMm = PX_PER_MM.usual, onUse, onBack }: CardPageProps) {
  const { card, back } = useWords().tracing;
  const [width, setWidth] = useState(Math.round((pxPerMm * CARD.w) / STEP) * STEP);
  const set = (px: number) => setWidth(Math.min(MOST, Math.max(LEAST, px)));
  return (
    <div className="tracing-page">
      <h2>{card.title}</h2>
      <p>{card.how}</p>
      <p>{card.fit}</p>
      <div className="tracing-width">
        <Button icon={<Icon of={Minus} label={card.less} />} onClick={() => set(width - STEP)} />
        <label>
          <span className="only-read-aloud">{card.width}</span>
          <input
            type="range"
            min={LEAST}
            max={MOST}
            step={STEP}
            value={width}
            aria-valuetext={card.pixels(width)}
            onChange={(event) => set(Number(event.target.value))}
          />
        </label>
        <Button icon={<Icon of={Plus} label={card.more} />} onClick={() => set(width + STEP)} />
      </div>
      <div className="tracing-buttons">
        <Button icon={<Icon of={ArrowLeft} size={22} />} onClick={onBack}>
          {back}
        </Button>
        <Button look="primary" icon={<Icon of={Check} size={22} />} onClick={() => onUse(width / CARD.w)}>
          {card.use}
        </Button>
      </div>
      <div className="tracing-card-frame">
        <div className="tracing-card" style={{ width, height: (width * CARD.h) / CARD.w }} />
      </div>
    </div>
  );
}
