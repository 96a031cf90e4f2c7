import { type PlayingHand, wordsForHand } from '@ballfirst/library/words-for-hand';
import type { PhraseValues } from './fill-phrase.ts';

// Beside these words left and right mean a side of the body, which is the other one for the other hand.
const parts =
  'hand|wrist|arm|elbow|shoulder|hip|thigh|knee|leg|heel|foot|toe|ankle|side|ear|eye|collarbone|trouser pocket|pocket';
const sided = new RegExp(`\\b(left|right)(?= (?:${parts})\\b)`, 'g');

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Values too short or too common to be told from other words of a sentence. */
const worthFinding = (name: string, value: string): boolean =>
  name === 'player'
    ? value.length > 1
    : /^(measured|doubted|band):/.test(name) || ['drill', 'club', 'often', 'forward'].includes(name);

/** A figure with the side it lies on belongs together: the next player's may lie on the other side. */
const withWay = (values: PhraseValues): (readonly [found: string, put: string])[] =>
  Object.entries(values).flatMap(([name, value]) => {
    const way = name.startsWith('doubted:') ? name.replace('doubted', 'way') : '';
    return values[way] ? [[`${value} ${values[way]}`, `{${name}} {${way}}`] as const] : [];
  });

/**
 * The words of a reply with variables where they told a name, a club, a drill, a count or a measurement of this player,
 * and sides of the body by lead and trail: filled again they fit the next player. What is not found stays as it is.
 *
 * @param hand - the player's
 */
export const templateOf = (words: string, values: PhraseValues, hand: PlayingHand): string => {
  const { count, balls } = values;
  const single = Object.entries(values)
    .filter(([name, value]) => worthFinding(name, value))
    .map(([name, value]) => [`{${name}}`, value] as const);
  const told = [...single, ...withWay(values).map(([found, put]) => [put, found] as const)]
    .map(([put, found]) => [put, wordsForHand(found, hand)] as const)
    .sort(([, a], [, b]) => b.length - a.length);
  let text =
    count === undefined || balls === undefined
      ? words
      : words.replaceAll(`${count} of your ${balls} balls`, '{count} of your {balls} balls');
  for (const [put, found] of told) {
    text = text.replace(new RegExp(`(?<![\\w{:-])${escaped(found)}(?![\\w}])`, 'g'), put);
  }
  return text.replace(sided, (side) => (side === hand ? '{trail}' : '{lead}'));
};
