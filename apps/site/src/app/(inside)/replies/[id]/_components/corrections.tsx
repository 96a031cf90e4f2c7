'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { When } from '../../../../../times/when.tsx';
import { replyWords } from '../../../../../words/reply.ts';
import { CorrectForm } from './correct-form.tsx';
import styles from './reply.module.css';

type Props = { reply: Reply<'readReply'>; mayCorrect: boolean };

/** What the reply said before, and for a coach the way to put it right. */
export function Corrections({ reply, mayCorrect }: Props) {
  const { earlier, correctedAt } = reply;
  if (correctedAt === null && !mayCorrect) return null;
  const films = new Set([reply.teachingClip, ...earlier.map((one) => one.teachingClip)].map((it) => it?.url));
  const filmChanged = films.size > 1;
  return (
    <section className="stack tight no-print measure" aria-label={replyWords.corrections}>
      {correctedAt !== null && (
        <details>
          <summary>
            {replyWords.corrected} <When at={correctedAt} />
          </summary>
          {earlier.map(({ words, teachingClip, at }) => (
            <div key={at} className="stack tight">
              <p className="soft small">
                {replyWords.before} <When at={at} />
              </p>
              <p className={styles.words}>{words}</p>
              {filmChanged && (
                <p className="soft small">
                  {teachingClip === null
                    ? replyWords.beforeNoFilm
                    : replyWords.beforeFilm(teachingClip.title)}
                </p>
              )}
            </div>
          ))}
        </details>
      )}
      {mayCorrect && <CorrectForm reply={reply} />}
    </section>
  );
}
