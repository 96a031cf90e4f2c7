'use client';
import Link from 'next/link';
import { clockOf } from '../../../../../talk-through/captions-from.ts';
import { goesWithWords } from '../../../../../words/goes-with.ts';
import type { ReplyForm } from './reply-form.ts';
import type { Film } from './use-helps.ts';

type Props = {
  form: Pick<ReplyForm, 'cause' | 'teachingClip' | 'withTalk'>;
  films: readonly Film[];
  /** How long the recorded talk-through is; null: none is recorded. */
  talkMs: number | null;
  canWork: boolean;
  onChange: (next: Partial<ReplyForm>) => void;
};

/** The film about the cause and the recorded voice: what is ticked goes with the reply. */
export function GoesWith({ form, films, talkMs, canWork, onChange }: Props) {
  const { cause, teachingClip, withTalk } = form;
  const film = films.find((one) => one.cause === (teachingClip ?? cause));
  return (
    <fieldset className="stack tight" disabled={!canWork}>
      <legend>{goesWithWords.title}</legend>
      {talkMs === null ? (
        <p className="soft small">{goesWithWords.talkNone}</p>
      ) : (
        <label className="choice">
          <input
            type="checkbox"
            checked={withTalk}
            onChange={(event) => onChange({ withTalk: event.target.checked })}
          />
          {goesWithWords.talk(clockOf(talkMs))}
        </label>
      )}
      {film !== undefined && (
        <>
          <label className="choice">
            <input
              type="checkbox"
              checked={teachingClip === film.cause}
              aria-describedby="film-key"
              onChange={(event) => onChange({ teachingClip: event.target.checked ? film.cause : null })}
            />
            {goesWithWords.film(film.title)}
          </label>
          <p id="film-key" className="hint">
            {goesWithWords.filmKey}
          </p>
          <span role="status" className="unseen">
            {teachingClip === film.cause ? goesWithWords.filmIn(film.title) : goesWithWords.filmOut}
          </span>
        </>
      )}
      {film === undefined && cause !== null && (
        <p className="soft small">
          {goesWithWords.filmNone} <Link href="/faults">{goesWithWords.filmKeep}</Link>
        </p>
      )}
    </fieldset>
  );
}
