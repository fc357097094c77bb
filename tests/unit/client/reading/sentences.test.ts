import { describe, expect, it } from 'vitest';
import { asText, inWords } from '../../../../client/tablet/reading/sentences.ts';
import type { Drawing } from '../../../../shared/documents/design.ts';
import { DEMO_KIT } from '../../../../shared/kit/demo-kit.ts';
import { layOut } from '../../../../shared/track/layout.ts';
import { wording } from '../../../../shared/wording/wording.ts';
import { SHEET } from '../editor-setting.ts';

const drawing: Drawing = {
  lines: [
    {
      id: 'l1',
      width: 5,
      from: { x: 40, y: 160 },
      pieces: [
        { to: { x: 250, y: 160 }, bulge: 0 },
        { to: { x: 250, y: 60 }, bulge: 0 },
      ],
    },
  ],
  marks: [
    {
      id: 'm1',
      line: 'l1',
      at: 114,
      bands: [
        { ink: 'C', length: 6, gap: 0 },
        { ink: 'A', length: 6, gap: 0 },
      ],
    },
  ],
};
const told = (language: 'en' | 'es', what = drawing) =>
  inWords(layOut(SHEET, what), { sheet: SHEET, kit: DEMO_KIT, words: wording(language), locale: language });

describe('inWords', () => {
  it('tells berths, then the line with its mark from both sides and its corner', () => {
    expect(told('en')).toEqual({
      places: [
        'boathouse: robots set out here, 4 cm across, 16 cm down.',
        'lighthouse: 25 cm across, 6 cm down.',
      ],
      lines: [
        {
          line: 'Line 1, from boathouse to lighthouse: 31 cm.',
          steps: [
            'After 12 cm: mark faster; from the other side slower.',
            'After 21 cm: corner of 90°, to the left.',
          ],
        },
      ],
    });
  });
  it('tells a box for marks by two of its corners', () => {
    const boxes = [
      { id: 'b', name: { en: 'Bracket', es: 'Paréntesis' }, at: { x: 40, y: 60 }, w: 80, h: 25 },
    ];
    const places = (locale: 'en' | 'es') =>
      inWords(layOut(SHEET, drawing), {
        sheet: { ...SHEET, boxes },
        kit: DEMO_KIT,
        words: wording(locale),
        locale,
      }).places.at(-1);
    expect(places('en')).toBe(
      'Bracket, a box to put marks into: from 4 cm across, 6 cm down to 12 cm across, 8.5 cm down.',
    );
    expect(places('es')).toBe(
      'Paréntesis, un recuadro para poner marcas: desde 4 cm a lo ancho, 6 cm hacia abajo hasta 12 cm a lo ancho, 8,5 cm hacia abajo.',
    );
  });
  it('tells the same in Spanish, and all of it as one text', () => {
    expect(told('es').lines[0]!.steps[1]).toBe('Después de 21 cm: esquina de 90°, a la izquierda.');
    expect(asText(told('en', { lines: [], marks: [] }))).toBe(
      'boathouse: robots set out here, 4 cm across, 16 cm down. lighthouse: 25 cm across, 6 cm down.',
    );
  });
});
