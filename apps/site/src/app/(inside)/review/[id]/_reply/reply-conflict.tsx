'use client';
import { causes } from '@ballfirst/library/causes';
import { reviewWords } from '../../../../../words/review.ts';
import styles from './reply-conflict.module.css';
import type { ReplyForm } from './reply-form.ts';
import { formOf } from './same-form.ts';
import type { Replying } from './use-reply.ts';

const causeName = (id: string | null): string =>
  causes.find((cause) => cause.id === id)?.name ?? reviewWords.noCause;

function Text({ title, form }: { title: string; form: ReplyForm }) {
  return (
    <div className={styles.text}>
      <h4>{title}</h4>
      <p className="small">{causeName(form.cause)}</p>
      <p className={styles.said}>{form.words === '' ? reviewWords.noWords : form.words}</p>
    </div>
  );
}

/** Two texts for one reply: both are shown, and nothing is saved until one of them is chosen. */
export function ReplyConflict({ replying }: { replying: Replying }) {
  const { form, theirs, settle } = replying;
  if (theirs === null) return null;
  return (
    <section className="notice look stack tight" role="alert" aria-labelledby="text-conflict-title">
      <h3 id="text-conflict-title">{reviewWords.textConflictTitle}</h3>
      <div className={styles.both}>
        <Text title={reviewWords.yourText} form={form} />
        <Text title={reviewWords.otherText} form={formOf(theirs)} />
      </div>
      <div className="row">
        <button type="button" onClick={() => settle(form)}>
          {reviewWords.keepMine}
        </button>
        <button type="button" onClick={() => settle(formOf(theirs))}>
          {reviewWords.takeTheirs}
        </button>
        <button
          type="button"
          onClick={() => settle({ ...form, words: `${form.words}\n\n${theirs.words}`.slice(0, 4000) })}
        >
          {reviewWords.keepBoth}
        </button>
      </div>
    </section>
  );
}
