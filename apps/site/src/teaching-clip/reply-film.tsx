import type { Reply } from '@ballfirst/contracts/client';
import { goesWithWords } from '../words/goes-with.ts';
import { FilmLink } from './film-link.tsx';

type Props = { film: NonNullable<Reply<'readReply'>['teachingClip']>; level?: 2 | 3 };

/** The academy's film about the cause: its name opens it, and it is told in words beside. */
export function ReplyFilm({ film, level = 2 }: Props) {
  const Heading = level === 2 ? 'h2' : 'h3';
  return (
    <section className="stack tight measure" aria-label={goesWithWords.filmTitle}>
      <Heading>{goesWithWords.filmTitle}</Heading>
      <p>
        <FilmLink clip={film} />
      </p>
      {film.words !== '' && <p className="small">{film.words}</p>}
    </section>
  );
}
