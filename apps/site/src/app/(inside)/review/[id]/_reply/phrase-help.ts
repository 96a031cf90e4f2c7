import type { Reply } from '@ballfirst/contracts/client';
import { causes } from '@ballfirst/library/causes';
import { faultById } from '@ballfirst/library/faults';
import type { CameraView, FaultId } from '@ballfirst/library/types';
import { wordsForHand } from '@ballfirst/library/words-for-hand';
import { fillPhrase, type PhraseValues } from '@ballfirst/practice/fill-phrase';
import { type OfferedPhrase, offerPhrases } from '@ballfirst/practice/offer-phrases';
import { phraseValues } from '@ballfirst/practice/phrase-values';
import { clubNames } from '../../../../../words/names.ts';
import type { Evidence, Observation } from '../_marking/marking.ts';

export type Phrase = Reply<'listPhrases'>['items'][number];
type Submission = Reply<'readSubmission'>;

export type PhraseFactsHere = {
  readonly submission: Pick<Submission, 'student' | 'tally' | 'club'>;
  readonly units: 'metric' | 'imperial';
  readonly fault: FaultId;
  /** Where the camera stood, what was measured and what was tapped, of the clip at hand. */
  readonly view: CameraView | null;
  readonly readings: readonly Evidence['readings'][number][];
  readonly fatRisk: Evidence['fatRisk'];
  readonly observations: readonly Observation[];
  readonly phrases: readonly Phrase[];
};
/** What fills phrases on this review. */
export type PhraseHelp = PhraseFactsHere;

type Choice = { readonly cause: string | null; readonly drillName: string | null };

/** The values of this swing for the phrases, by the cause and the drill at hand. */
export const valuesHere = (help: PhraseFactsHere, { cause, drillName }: Choice): PhraseValues => {
  const { submission, units, fault, readings, fatRisk } = help;
  const { name, hand } = submission.student;
  const counts: Readonly<Record<string, unknown>> = submission.tally;
  const count = counts[fault];
  const club = clubNames[submission.club];
  return phraseValues({
    player: name,
    units,
    club: /\d/.test(club) ? club : club.toLowerCase(),
    fault: wordsForHand(faultById(fault).studentName, hand).toLowerCase(),
    count: typeof count === 'number' ? count : null,
    balls: submission.tally.balls,
    cause: causes.find(({ id }) => id === cause)?.name ?? null,
    drill: drillName,
    readings,
    ground: fatRisk?.kind === 'told' ? { fat: fatRisk.fat, forwardMm: fatRisk.forward.byMm } : null,
  });
};

/** The phrases that can be said here, filled in, with left and right for this player. */
export const phrasesHere = (help: PhraseFactsHere, choice: Choice): readonly OfferedPhrase<Phrase>[] => {
  const values = valuesHere(help, choice);
  const { hand } = help.submission.student;
  const { fault, view, readings, observations } = help;
  const given = { cause: choice.cause, fault, view, values, readings, observations };
  return offerPhrases(help.phrases, given).map(({ phrase, text }) => ({
    phrase,
    text: wordsForHand(text, hand),
  }));
};

/** Words kept with variables, filled from this swing; what was not measured here is left out with its sentence. */
export const refilled = (help: PhraseFactsHere, choice: Choice, words: string): string => {
  const values = valuesHere(help, choice);
  const sentences = words.split(/(?<=[.!?])(\s+)/);
  const told = sentences
    .map((sentence) => fillPhrase(sentence, values) ?? '')
    .join('')
    .replaceAll(/[ \t]{2,}/g, ' ');
  return wordsForHand(told, help.submission.student.hand).trim();
};
