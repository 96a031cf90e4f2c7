'use client';
import { filmWords } from '../../../../words/film.ts';
import { ClipSlot } from './clip-slot.tsx';
import type { Slot } from './slot.ts';

/** One more view, asked for only where the tapped miss shows from behind. */
export function BehindStep({ slot, hand }: { slot: Slot; hand: 'right' | 'left' }) {
  return (
    <section className="stack ruled" aria-labelledby="behind-title">
      <h3 id="behind-title">{filmWords.behindHelps}</h3>
      <p>{filmWords.behindWhy}</p>
      <ClipSlot slot={slot} hand={hand} />
    </section>
  );
}
