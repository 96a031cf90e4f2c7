'use client';
import type { Reply } from '@ballfirst/contracts/client';
import type { FaultId } from '@ballfirst/library/types';
import { clubNames, handNames, swingLengthNames, viewNames } from '../../../../../words/names.ts';
import { reviewWords } from '../../../../../words/review.ts';
import styles from './desk-bar.module.css';
import { FaultChoice } from './fault-choice.tsx';

type Submission = Reply<'readSubmission'>;
type Props = {
  clips: readonly Submission['clips'][number][];
  at: number;
  onClip: (index: number) => void;
  fault: FaultId;
  onFault: (fault: FaultId) => void;
  swing: { hand: 'right' | 'left'; club: Submission['club'] };
  onPutRight: () => void;
};

/** Which clip is on the desk, as what it is read, and the way to put that right. */
export function DeskBar({ clips, at, onClip, fault, onFault, swing, onPutRight }: Props) {
  const clip = clips[at];
  return (
    <div className={styles.bar}>
      {clips.length > 1 && (
        <div className="row">
          {clips.map((one, index) => (
            <button
              key={one.id}
              type="button"
              className="small-button"
              aria-pressed={index === at}
              onClick={() => onClip(index)}
            >
              {reviewWords.clip(index + 1)}, {viewNames[one.view].toLowerCase()}
            </button>
          ))}
        </div>
      )}
      <FaultChoice fault={fault} onFault={onFault} />
      {clip !== undefined && (
        <p className={styles.setting}>
          {viewNames[clip.view]}, {swingLengthNames[clip.swingLength].toLowerCase()},{' '}
          {clubNames[swing.club].toLowerCase()}, {handNames[swing.hand].toLowerCase()}
          <button type="button" className="plain small-button" aria-keyshortcuts="e" onClick={onPutRight}>
            {reviewWords.putRight}
          </button>
        </p>
      )}
    </div>
  );
}
