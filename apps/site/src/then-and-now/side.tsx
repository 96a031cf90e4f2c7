'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { TenBalls } from '../drawings/ten-balls.tsx';
import { SwingFrame } from '../swing-frame/swing-frame.tsx';
import { When } from '../times/when.tsx';
import { ownTrialWords } from '../words/asking.ts';
import { tallyInWords } from '../words/tally.ts';

export type PairSide = NonNullable<Reply<'readOwnTrial'>['first']>;

/** One swing of the pair: its picture and its ten balls. */
export function Side({ title, side }: { title: string; side: PairSide }) {
  const { picture, sentAt, tally, submissionId } = side;
  return (
    <div className="stack tight">
      <h3>
        {title}, <When at={sentAt} as="day" />
      </h3>
      {picture === null ? (
        <p className="soft">{ownTrialWords.noPicture}</p>
      ) : (
        <SwingFrame
          frame={{
            ...picture,
            clipId: submissionId,
            frame: 0,
            caption: '',
            still: null,
            described: title,
            marks: [],
          }}
        />
      )}
      <TenBalls tally={tally} />
      <p className="small">{tallyInWords(tally, 'student')}</p>
    </div>
  );
}
