'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { phrases as libraryPhrases } from '@ballfirst/library/phrases';
import { savedPhrase } from '@ballfirst/practice/saved-phrase';
import { useCallback, useEffect, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import type { Phrase } from './phrase-help.ts';
import type { Offer } from './reply-form.ts';

/** A film that may go with a reply. */
export type Film = NonNullable<Reply<'readReply'>['teachingClip']>;
export type Start = Reply<'listStartingPoints'>['items'][number];

const builtIn: readonly Phrase[] = libraryPhrases.map(savedPhrase);

/** What helps to write a reply: phrases, kept replies, films, and the programme that fits for the chosen cause. */
export const useHelps = (
  submissionId: string,
  cause: string | null,
  canWork: boolean,
  /** The film that the draft holds: it may have been taken away since. */
  held: Film | null,
) => {
  const [phrases, setPhrases] = useState<readonly Phrase[]>(builtIn);
  const [starts, setStarts] = useState<readonly Start[]>([]);
  const [films, setFilms] = useState<readonly Film[]>(held === null ? [] : [held]);
  const [offer, setOffer] = useState<Offer | null>(null);

  const readPhrases = useCallback(async () => {
    const found = await answerOf(api.GET('/api/phrases')).catch(() => null);
    if (found !== null) setPhrases(found.items);
  }, []);
  const readStarts = useCallback(async () => {
    const found = await answerOf(api.GET('/api/starting-points')).catch(() => null);
    if (found !== null) setStarts(found.items);
  }, []);
  const readFilms = useCallback(async () => {
    const found = await answerOf(api.GET('/api/library/teaching-clips')).catch(() => null);
    if (found === null) return;
    const gone = held !== null && !found.items.some((one) => one.cause === held.cause);
    setFilms(gone ? [...found.items, held] : found.items);
  }, [held]);
  /** The offer for a cause; null when it could not be had: a reply can be written without. */
  const offerFor = useCallback(
    async (wanted: string): Promise<Offer | null> => {
      const params = { path: { id: submissionId }, query: { cause: wanted } };
      const asked = api.GET('/api/submissions/{id}/programme-offer', { params });
      const found = await answerOf(asked).catch(() => null);
      setOffer(found);
      return found;
    },
    [submissionId],
  );

  useEffect(() => {
    if (!canWork) return;
    void readPhrases();
    void readStarts();
    void readFilms();
  }, [canWork, readPhrases, readStarts, readFilms]);
  useEffect(() => {
    if (canWork && cause !== null && offer?.cause !== cause) void offerFor(cause);
  }, [canWork, cause, offer?.cause, offerFor]);

  return { phrases, starts, films, offer, offerFor, readPhrases, readStarts };
};

export type Helps = ReturnType<typeof useHelps>;
