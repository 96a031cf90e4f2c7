'use client';
import type { Reply as Replies } from '@ballfirst/contracts/client';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import Link from 'next/link';
import { Cautions } from '../../../../../drill-card/cautions.tsx';
import { DrillCard } from '../../../../../drill-card/drill-card.tsx';
import { KeepStart } from '../../../../../starting-point/keep-start.tsx';
import { SwingFrame } from '../../../../../swing-frame/swing-frame.tsx';
import { SwingPlayer } from '../../../../../swing-frame/swing-player.tsx';
import { HeardTalk } from '../../../../../talk-through/heard-talk.tsx';
import { ReplyFilm } from '../../../../../teaching-clip/reply-film.tsx';
import { ThenAndNow } from '../../../../../then-and-now/then-and-now.tsx';
import { When } from '../../../../../times/when.tsx';
import { tickNames } from '../../../../../words/names.ts';
import { drillWords, replyWords } from '../../../../../words/reply.ts';
import { Corrections } from './corrections.tsx';
import styles from './reply.module.css';
import { SayRead } from './say-read.tsx';
import { Thread } from './thread.tsx';
import { useOpenedOnce } from './use-opened-once.ts';

type Props = { reply: Replies<'readReply'>; hand: PlayingHand; isReader: boolean };

/** A reply: first screen one sentence, one picture; then the coach's words, the set-up and the drill. */
export function Reply({ reply, hand, isReader }: Props) {
  useOpenedOnce(reply.id, isReader && reply.readAt === null);
  const [first, ...others] = reply.frames;
  const { programme } = reply;
  const paragraphs = reply.words.split(/\n{2,}/).filter((one) => one.trim() !== '');
  const practises = isReader && (programme?.status === 'open' || programme?.status === 'held');
  return (
    <>
      <div className={styles.first} data-pictured={first !== undefined}>
        <div className={`stack tight ${styles.sentence}`}>
          <p className="soft small">
            {replyWords.from(reply.coach)}, <When at={reply.sentAt} />
          </p>
          <h1>{reply.sentence}</h1>
        </div>
        {first !== undefined && <SwingFrame frame={first} />}
        <div className="stack">
          {reply.talkThrough !== null && <HeardTalk talk={reply.talkThrough} />}
          <div>
            {first !== undefined && <SwingPlayer rendition={first.rendition} poster={first.poster} />}
            {programme !== null && (
              <a href="#drill-card" className={styles.toDrill}>
                {replyWords.toDrill(programme.drill.name)}
              </a>
            )}
          </div>
          <section className="stack tight measure" aria-labelledby="reply-words">
            <h2 id="reply-words">{replyWords.words}</h2>
            {paragraphs.map((paragraph) => (
              <p key={paragraph} className={styles.words}>
                {paragraph}
              </p>
            ))}
          </section>
          {reply.more.length > 0 && (
            <section className="stack tight measure" aria-labelledby="reply-also">
              <h2 id="reply-also">{replyWords.alsoWork}</h2>
              {reply.more.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
            </section>
          )}
          {reply.setUpTicks.length > 0 && (
            <section className="stack tight" aria-labelledby="reply-ticks">
              <h2 id="reply-ticks">{replyWords.ticks}</h2>
              <p className="hint">{replyWords.tickHint}</p>
              <ul className={styles.ticks}>
                {reply.setUpTicks.map((tick) => (
                  <li key={tick}>{tickNames[tick]}</li>
                ))}
              </ul>
            </section>
          )}
        </div>
      </div>
      {others.length > 0 && (
        <section className="stack no-print" aria-labelledby="reply-more">
          <h2 id="reply-more">{replyWords.more}</h2>
          <div className={styles.more}>
            {others.map((frame) => (
              <SwingFrame key={`${frame.clipId} ${frame.frame}`} frame={frame} />
            ))}
          </div>
        </section>
      )}
      {programme === null ? (
        <>
          <p>{replyWords.noProgramme}</p>
          <Cautions title={drillWords.cautions} cautions={reply.cautions} />
        </>
      ) : (
        <DrillCard programme={programme} hand={hand} />
      )}
      {reply.teachingClip !== null && (
        <div className="no-print">
          <ReplyFilm film={reply.teachingClip} />
        </div>
      )}
      <SayRead reply={reply} isReader={isReader} />
      {!isReader && programme !== null && <KeepStart replyId={reply.id} />}
      <ThenAndNow submissionId={reply.submissionId} hand={hand} />
      <Corrections reply={reply} mayCorrect={!isReader} />
      <Thread replyId={reply.id} first={reply.thread} reader={isReader ? 'student' : 'coach'} />
      <div className="row no-print">
        {practises && (
          <Link href="/home#practice" className="button main">
            {replyWords.practise}
          </Link>
        )}
        {programme !== null && (
          <button type="button" onClick={() => window.print()}>
            {replyWords.print}
          </button>
        )}
        {isReader && (
          <Link href="/home" className="button plain">
            {replyWords.home}
          </Link>
        )}
      </div>
    </>
  );
}
