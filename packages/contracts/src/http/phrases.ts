import { faults } from '@ballfirst/library/types';
import { z } from 'zod';
import { operation } from '../operation.ts';
import { View } from '../words.ts';
import { idParam } from './submissions.ts';

const About = z.string().trim().min(1, 'Say what it is about.').max(60);
const Text = z.string().trim().min(1, 'Write the phrase.').max(1000);

/**
 * A saved explanation. `text` holds variables in braces that are filled from the swing at hand; what stands in double
 * brackets is left out where its value was not measured.
 */
export const Phrase = z.object({
  id: z.string(),
  about: z.string(),
  text: z.string(),
  whose: z.enum(['library', 'academy', 'own']),
  /** The causes it speaks of; empty: any. */
  causes: z.array(z.string()),
  /** What it does: says what is shown, why that makes the miss, what to try unseen, what is good; `plain`: anything. */
  kind: z.enum(['shows', 'why', 'unseen', 'praise', 'plain']),
  /** Only where this measurement lies on this side of its band, or was not made; `within`: only where it was. */
  when: z.object({ key: z.string(), side: z.enum(['below', 'above', 'within']) }).nullable(),
  /** Only where this was not answered otherwise; `no`: only where it was answered. */
  seen: z.object({ key: z.string(), answer: z.enum(['yes', 'no']) }).nullable(),
  /** Only with these misses and in these views; empty: any. */
  faults: z.array(z.enum(faults)),
  views: z.array(View),
});

export const listPhrases = operation({
  id: 'listPhrases',
  method: 'GET',
  path: '/api/phrases',
  tag: 'library',
  who: ['coach', 'manager'],
  status: 200,
  summary: "The phrases of the library, of the academy and one's own.",
  reply: z.object({ items: z.array(Phrase) }),
});
export const savePhrase = operation({
  id: 'savePhrase',
  method: 'POST',
  path: '/api/phrases',
  tag: 'library',
  who: ['coach', 'manager'],
  status: 201,
  summary: 'Keep a phrase, for oneself or for all coaches of the academy.',
  body: z.object({ about: About, text: Text, whose: z.enum(['own', 'academy']) }),
  reply: Phrase,
  creates: true,
});
export const removePhrase = operation({
  id: 'removePhrase',
  method: 'DELETE',
  path: '/api/phrases/{id}',
  tag: 'library',
  who: ['coach', 'manager'],
  status: 204,
  summary: "Take a phrase of one's own, or of the academy, out of the list.",
  params: idParam,
  reply: z.null(),
});
