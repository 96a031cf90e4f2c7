import type { Reply } from '@ballfirst/contracts/client';
import { When } from '../times/when.tsx';
import { progressWords } from '../words/progress.ts';

type Props = { progress: NonNullable<Reply<'readHome'>['progress']>; title: string };

/** Whether the drill works: what is better first, then the balls, then how sure. */
export function ProgressNote({ progress, title }: Props) {
  return (
    <section className="stack tight" aria-labelledby="progress-title">
      <h2 id="progress-title">{title}</h2>
      <p>
        <strong>{progress.words}</strong>
      </p>
      {progress.balls !== null && <p>{progress.balls}</p>}
      <p className="hint">
        {progressWords.between} <When at={progress.latest} as="day" /> {progressWords.and}{' '}
        <When at={progress.since} as="day" />. {progress.basis}
      </p>
    </section>
  );
}
