'use client';
import Link from 'next/link';
import { PhoneHeight } from '../../../../drawings/phone-height.tsx';
import { RadioRow } from '../../../../shell/radio-row.tsx';
import { filmWords } from '../../../../words/film.ts';
import { swingLengthNames } from '../../../../words/names.ts';
import { sendWords } from '../../../../words/send.ts';
import { ClipSlot } from './clip-slot.tsx';
import type { Draft } from './draft.ts';
import { GripSlot } from './grip-slot.tsx';
import { isFilled, type Slots } from './slot.ts';
import type { GripSlot as Grip } from './use-grip-photo.ts';

export type Length = NonNullable<Draft['swingLength']>;
type Props = {
  slots: Slots;
  grip: Grip;
  hand: 'right' | 'left';
  junior: boolean;
  swingLength: Length;
  onLength: (length: Length) => void;
  /** As in the present step of the student's drill; null without one. */
  rungLength: Length | null;
};
const lengths: readonly Length[] = ['full', 'three-quarter', 'hip-high'];

/** Step one: where the phone stands, and the video, which goes up at once. */
export function FilmStep({ slots, grip, hand, junior, swingLength, onLength, rungLength }: Props) {
  return (
    <div className="stack">
      <p>
        <strong>{filmWords.usual}</strong> {filmWords.slow}
      </p>
      <PhoneHeight />
      <p>
        <Link href="/filming" target="_blank">
          {filmWords.guide}
        </Link>
      </p>
      <p className="notice">
        {filmWords.safe} {junior && filmWords.junior}
      </p>
      <ClipSlot slot={slots['face-on']} hand={hand} />
      <RadioRow
        legend={sendWords.length}
        {...(rungLength !== null && { hint: sendWords.prefilled })}
        names={swingLengthNames}
        order={rungLength === 'rehearsal' ? [...lengths, 'rehearsal'] : lengths}
        value={swingLength}
        onChange={onLength}
      />
      <details open={isFilled(slots['down-the-line'])}>
        <summary>{filmWords.behindAlso}</summary>
        <div className="stack">
          <p className="hint">{filmWords.behindWhen}</p>
          <ClipSlot slot={slots['down-the-line']} hand={hand} />
        </div>
      </details>
      <GripSlot slot={grip} />
    </div>
  );
}
