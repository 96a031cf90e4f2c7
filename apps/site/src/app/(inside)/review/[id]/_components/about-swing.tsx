'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { causes } from '@ballfirst/library/causes';
import Link from 'next/link';
import { TenBalls } from '../../../../../drawings/ten-balls.tsx';
import { When } from '../../../../../times/when.tsx';
import {
  ageNames,
  clubNames,
  curveNames,
  handNames,
  lieNames,
  rungNames,
  spelt,
  standingNames,
  startNames,
  submissionStatusNames,
} from '../../../../../words/names.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { tallyInWords } from '../../../../../words/tally.ts';
import styles from './about-swing.module.css';

type Review = Reply<'openReview'>;
type Props = { review: Pick<Review, 'submission' | 'openProgramme' | 'earlier'>; drillName: string | null };

/** The strip about the student: what was hit, what was said, what is being practised. */
export function AboutSwing({ review, drillName }: Props) {
  const { submission, openProgramme, earlier } = review;
  const { student } = submission;
  return (
    <section aria-label={reviewWords.aboutStudent} className={styles.about}>
      <div>
        <TenBalls tally={submission.tally} />
        <p className="small">{tallyInWords(submission.tally)}</p>
        <p className="small">
          {startNames[submission.startLine]}, {curveNames[submission.curve]}
        </p>
      </div>
      <p className="small">
        {handNames[student.hand]}, {ageNames[student.ageGroup].toLowerCase()},{' '}
        {standingNames[student.standing].toLowerCase()}
        <br />
        {clubNames[submission.club]}, {lieNames[submission.lie].toLowerCase()},{' '}
        {reviewWords.typical[submission.typical]}
        <br />
        {reviewWords.answerBy} <When at={submission.answerBy} />
        {student.trialEndsAt !== null && (
          <>
            . {reviewWords.trialEnds} <When at={student.trialEndsAt} as="day" />
          </>
        )}
      </p>
      <p>{submission.note === '' ? <span className="soft">{reviewWords.noNote}</span> : submission.note}</p>
      <div className="small">
        {openProgramme !== null && (
          <p>
            {reviewWords.openProgramme(
              drillName ?? spelt(openProgramme.drillId),
              (rungNames[openProgramme.rung] ?? openProgramme.rung).toLowerCase(),
              openProgramme.entries,
            )}
          </p>
        )}
        {earlier.length === 0 ? (
          <p className="soft">{reviewWords.first}</p>
        ) : (
          <ul className={styles.earlier} aria-label={reviewWords.earlier}>
            {earlier.map((one) => (
              <li key={one.id}>
                <Link href={`/review/${one.id}`}>
                  <When at={one.sentAt} as="day" />
                </Link>{' '}
                {causes.find(({ id }) => id === one.cause)?.name ?? submissionStatusNames[one.status]}
              </li>
            ))}
          </ul>
        )}
      </div>
    </section>
  );
}
