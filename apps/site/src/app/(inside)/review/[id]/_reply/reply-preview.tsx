'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { causes } from '@ballfirst/library/causes';
import { everyDrill } from '@ballfirst/library/cautions';
import { drills as library } from '@ballfirst/library/drills';
import { wordsForHand } from '@ballfirst/library/words-for-hand';
import { Cautions } from '../../../../../drill-card/cautions.tsx';
import { SwingFrame } from '../../../../../swing-frame/swing-frame.tsx';
import { clockOf } from '../../../../../talk-through/captions-from.ts';
import { ReplyFilm } from '../../../../../teaching-clip/reply-film.tsx';
import { goesWithWords } from '../../../../../words/goes-with.ts';
import { placeNames, tickNames } from '../../../../../words/names.ts';
import { drillWords, replyWords } from '../../../../../words/reply.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { previewFrames } from './preview-frames.ts';
import { purposeFor } from './purpose-for.ts';
import styles from './reply-editor.module.css';
import type { Drill, Offer, ReplyForm } from './reply-form.ts';
import type { Film } from './use-helps.ts';

type Props = {
  form: ReplyForm;
  drills: readonly Drill[];
  hand: 'right' | 'left';
  offer: Offer | null;
  clips: Reply<'readSubmission'>['clips'];
  marking: Parameters<typeof previewFrames>[2];
  film: Film | null;
  /** Of the talk-through that goes with it; null: none does. */
  talkMs: number | null;
};

const forStudent = (id: string, hand: Props['hand']): string | null => {
  const cause = causes.find((one) => one.id === id);
  return cause === undefined ? null : wordsForHand(cause.forStudent, hand);
};

/** Those of every drill, then of the drills that are given: as on the student's page. */
const cautionsOf = (plan: ReplyForm['plan'], hand: Props['hand']): readonly string[] => {
  const given = library.filter(({ id }) => id === plan?.drillId || id === plan?.second?.drillId);
  return [...new Set([...everyDrill, ...given.flatMap(({ cautions }) => cautions)])].map((caution) =>
    wordsForHand(caution, hand),
  );
};

/** The reply in the order and the words of the student's page, with the cautions it brings. */
export function ReplyPreview({ form, drills, hand, offer, clips, marking, film, talkMs }: Props) {
  const { plan } = form;
  const drill = drills.find(({ id }) => id === plan?.drillId) ?? null;
  const second = drills.find(({ id }) => id === plan?.second?.drillId) ?? null;
  const sentence = form.cause === null ? null : forStudent(form.cause, hand);
  const session = offer?.plan?.drillId === plan?.drillId ? offer?.session : null;
  const pictures = previewFrames(form, clips, marking);
  return (
    <section className={`stack ${styles.preview}`} aria-label={reviewWords.previewTitle}>
      <p className="small soft">{reviewWords.previewTitle}</p>
      {sentence !== null && <h3>{sentence}</h3>}
      {pictures.length > 0 && (
        <div className={styles.pictures}>
          {pictures.map((frame) => (
            <SwingFrame key={`${frame.clipId} ${frame.frame}`} frame={frame} />
          ))}
        </div>
      )}
      {talkMs !== null && <p className="small">{goesWithWords.talkGoes(clockOf(talkMs))}</p>}
      <p className={styles.said}>{form.words}</p>
      {form.moreCauses.map((id) => (
        <p key={id}>{forStudent(id, hand)}</p>
      ))}
      {form.setUpTicks.length > 0 && (
        <p className="small">
          {replyWords.ticks}: {form.setUpTicks.map((tick) => tickNames[tick]).join(', ')}
        </p>
      )}
      {film !== null && <ReplyFilm film={film} level={3} />}
      {drill !== null && plan !== null && (
        <div className="stack tight">
          <p>
            <strong>{drill.name}</strong> ({placeNames[plan.place].toLowerCase()}). {purposeFor(drill, hand)}
          </p>
          {(session?.words ?? []).map((line) => (
            <p key={line} className="small">
              {line}
            </p>
          ))}
          {second !== null && (
            <p>
              <strong>{second.name}.</strong> {purposeFor(second, hand)}
            </p>
          )}
        </div>
      )}
      <Cautions title={drillWords.cautions} cautions={cautionsOf(plan, hand)} level={3} />
    </section>
  );
}
