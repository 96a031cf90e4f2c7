'use client';
import { causes } from '@ballfirst/library/causes';
import { wordsForHand } from '@ballfirst/library/words-for-hand';
import { placeNames, tickNames } from '../../../../../words/names.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { purposeFor } from './purpose-for.ts';
import styles from './reply-editor.module.css';
import type { Drill, ReplyForm } from './reply-form.ts';

type Props = { form: ReplyForm; drills: readonly Drill[]; hand: 'right' | 'left' };

/** The reply in the order and the words of the student's page. */
export function ReplyPreview({ form, drills, hand }: Props) {
  const cause = causes.find(({ id }) => id === form.cause) ?? null;
  const drill = drills.find(({ id }) => id === form.plan?.drillId) ?? null;
  return (
    <section className={`stack ${styles.preview}`} aria-label={reviewWords.previewTitle}>
      <p className="small soft">{reviewWords.previewTitle}</p>
      {cause !== null && <h3>{wordsForHand(cause.forStudent, hand)}</h3>}
      <p className={styles.said}>{form.words}</p>
      {form.frames.length > 0 && (
        <p className="small">{form.frames.map(({ caption }) => caption).join('; ')}</p>
      )}
      {form.setUpTicks.length > 0 && (
        <p className="small">{form.setUpTicks.map((tick) => tickNames[tick]).join(', ')}</p>
      )}
      {drill !== null && form.plan !== null && (
        <p>
          <strong>{drill.name}</strong> ({placeNames[form.plan.place].toLowerCase()}).{' '}
          {purposeFor(drill, hand)}
        </p>
      )}
    </section>
  );
}
