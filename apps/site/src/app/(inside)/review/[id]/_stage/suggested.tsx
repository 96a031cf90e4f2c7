'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { suggestedWords } from '../../../../../words/suggested.ts';
import styles from './suggested.module.css';

type Clip = Reply<'readClip'>;
type Props = {
  suggestion: NonNullable<Clip['suggestion']>;
  strip: string | null;
  size: { widthPx: number; heightPx: number };
  frame: number;
  last: number;
  onFrame: (frame: number) => void;
};

/** What the machine heard and saw, to look there first: on the time line, as a sentence, and as a strip of film. */
export function Suggested({ suggestion, strip, size, frame, last, onFrame }: Props) {
  const { impact, window } = suggestion;
  if (impact === null && strip === null) return null;
  const at = (one: number): number => (100 * one) / Math.max(1, last);
  return (
    <section className={styles.suggested} aria-label={suggestedWords.title}>
      {(impact !== null || window !== null) && (
        <svg aria-hidden="true" viewBox="0 0 100 3" preserveAspectRatio="none" className={styles.line}>
          {window !== null && (
            <rect x={at(window.first)} width={at(window.last - window.first)} y={1} height={1} />
          )}
          {impact !== null && (
            <path
              d={`M${at(impact.frame - impact.uFrames)} 1.5H${at(impact.frame + impact.uFrames)}M${at(impact.frame)} 0V3`}
              data-confidence={impact.confidence}
            />
          )}
        </svg>
      )}
      {impact !== null && (
        <button type="button" className="small-button" onClick={() => onFrame(impact.frame)}>
          {suggestedWords.impact(impact)}
        </button>
      )}
      {strip !== null && (
        <Strip frames={suggestion.strip} href={strip} size={size} frame={frame} onFrame={onFrame} />
      )}
    </section>
  );
}

type StripProps = Pick<Props, 'size' | 'frame' | 'onFrame'> & { frames: readonly number[]; href: string };

/** Small pictures of the swing from its beginning to its end; a press shows the frame itself. */
function Strip({ frames, href, size, frame, onFrame }: StripProps) {
  const { widthPx, heightPx } = size;
  return (
    <ul className={styles.strip} aria-label={suggestedWords.strip}>
      {frames.map((one, index) => (
        <li key={one}>
          <button
            type="button"
            aria-label={suggestedWords.frame(one + 1)}
            {...(one === frame && { 'aria-current': 'true' as const })}
            onClick={() => onFrame(one)}
          >
            <svg aria-hidden="true" viewBox={`${index * widthPx} 0 ${widthPx} ${heightPx}`}>
              <image
                href={href}
                width={widthPx * frames.length}
                height={heightPx}
                preserveAspectRatio="none"
              />
            </svg>
          </button>
        </li>
      ))}
    </ul>
  );
}
