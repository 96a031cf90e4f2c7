'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { causes } from '@ballfirst/library/causes';
import { drills } from '@ballfirst/library/drills';
import Link from 'next/link';
import { TenBalls } from '../../../../../drawings/ten-balls.tsx';
import { When } from '../../../../../times/when.tsx';
import {
  ageNames,
  clubNames,
  curveNames,
  lieNames,
  rungNames,
  spelt,
  standingNames,
  startNames,
  submissionStatusNames,
  verdictNames,
} from '../../../../../words/names.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { tallyInWords } from '../../../../../words/tally.ts';
import styles from './about-swing.module.css';

type Review = Reply<'openReview'>;
type Props = {
  review: Pick<Review, 'submission' | 'openProgramme' | 'earlier' | 'about'>;
  drillName: string | null;
};

const causeName = (id: string | null): string | null => causes.find((cause) => cause.id === id)?.name ?? null;
const rungName = (rung: string): string => (rungNames[rung] ?? rung).toLowerCase();

/** What is being practised, for which cause, and how it went last. */
function Practising({
  programme,
  drillName,
}: {
  programme: Review['openProgramme'];
  drillName: string | null;
}) {
  if (programme === null) return null;
  const { last } = programme;
  const drill = drillName ?? spelt(programme.drillId);
  return (
    <p>
      {reviewWords.lastCause(causeName(programme.cause) ?? spelt(programme.cause))}{' '}
      {reviewWords.openProgramme(drill, rungName(programme.rung), programme.entries)}
      {last !== null &&
        `. ${reviewWords.lastEntry(last.clean, last.balls, rungName(last.rung), verdictNames[last.verdict].toLowerCase())}`}
      {last !== null &&
        last.drillId !== programme.drillId &&
        ` (${drills.find(({ id }) => id === last.drillId)?.name ?? spelt(last.drillId)})`}
      .
    </p>
  );
}

/** The strip about the student: what was hit and said, what is wanted, what was wrong before and whether it got better. */
export function AboutSwing({ review, drillName }: Props) {
  const { submission, openProgramme, earlier, about } = review;
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
      <div className="small">
        <p>
          {clubNames[submission.club]}, {lieNames[submission.lie].toLowerCase()},{' '}
          {reviewWords.typical[submission.typical]}
        </p>
        <p>
          {ageNames[student.ageGroup]}, {standingNames[student.standing].toLowerCase()}
        </p>
        <p>
          {reviewWords.answerBy} <When at={submission.answerBy} />
          {student.trialEndsAt !== null && (
            <>
              . {reviewWords.trialEnds} <When at={student.trialEndsAt} as="day" />
            </>
          )}
        </p>
      </div>
      <div>
        <p>{submission.note === '' ? <span className="soft">{reviewWords.noNote}</span> : submission.note}</p>
        {about.goal !== null && about.goal !== '' && (
          <p className="small">
            <strong>{reviewWords.goal}:</strong> {about.goal}
          </p>
        )}
      </div>
      <div className="small">
        <Practising programme={openProgramme} drillName={drillName} />
        {earlier.length === 0 ? (
          <p className="soft">{reviewWords.first}</p>
        ) : (
          <ul className={styles.earlier} aria-label={reviewWords.earlier}>
            {earlier.slice(0, 4).map((one) => (
              <li key={one.id}>
                <Link href={`/review/${one.id}`}>
                  <When at={one.sentAt} as="day" />
                </Link>{' '}
                {causeName(one.cause) ?? submissionStatusNames[one.status]}
              </li>
            ))}
          </ul>
        )}
      </div>
    </section>
  );
}
