import { ReplyFilm } from '@ballfirst/contracts/http/teaching';
import { SetUpTick } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import { everyDrill } from '@ballfirst/library/cautions';
import { type PlayingHand, wordsForHand } from '@ballfirst/library/words-for-hand';
import { threadOf } from '../asking/thread-of.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { heardTalk } from '../talk-through/heard-talk.ts';
import { namedCauses } from '../teaching/named-causes.ts';
import { findSentReply } from './find-sent-reply.ts';
import { programmeNow } from './programme-now.ts';
import { findProgramme, handOf } from './programme-of.ts';
import { replyFrames } from './reply-frames.ts';
import { replySentence } from './reply-sentence.ts';

/** A sent reply as the student reads it, with its drill card and cautions. @throws ProblemError not-found */
export const readReply = ({ ctx, input }: Call<'readReply'>): Promise<Reply<'readReply'>> =>
  inTransaction(ctx, async (tx) => {
    const row = await findSentReply(tx, ctx, input.id);
    const hand = handOf(row.submission.student);
    const programme =
      row.programmeId === null ? null : await programmeNow(tx, await findProgramme(tx, ctx, row.programmeId));
    return {
      id: row.id,
      submissionId: row.submissionId,
      coach: row.author.name,
      sentAt: row.sentAt.toISOString(),
      readAt: row.readAt?.toISOString() ?? null,
      saidReadAt: row.saidReadAt?.toISOString() ?? null,
      sentence: replySentence(row.cause, hand),
      causes: namedCauses(row),
      words: wordsForHand(row.words, hand),
      setUpTicks: row.setUpTicks.map((tick) => SetUpTick.parse(tick)),
      more: row.moreCauses.map((cause) => replySentence(cause, hand)),
      frames: await replyFrames(tx, ctx, row, hand),
      programme,
      earlier: await earlierOf(tx, ctx.academyId, row.id, hand),
      correctedAt: row.correctedAt?.toISOString() ?? null,
      version: row.version,
      thread: await threadOf(tx, ctx.academyId, row.id),
      talkThrough: row.withTalk ? await heardTalk(tx, ctx.academyId, row.submissionId) : null,
      teachingClip: ReplyFilm.nullable().parse(row.teachingClip),
      cautions: programme === null ? [...everyDrill] : programme.drill.cautions,
    };
  });

/** What a corrected reply said before, the newest first. */
const earlierOf = async (
  tx: Tx,
  academyId: string,
  replyId: string,
  hand: PlayingHand,
): Promise<Reply<'readReply'>['earlier']> => {
  const rows = await tx.replyVersion.findMany({ where: { academyId, replyId }, orderBy: { at: 'desc' } });
  return rows.map(({ words, teachingClip, at }) => ({
    words: wordsForHand(words, hand),
    teachingClip: ReplyFilm.nullable().parse(teachingClip),
    at: at.toISOString(),
  }));
};
