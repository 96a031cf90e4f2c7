import type { PhraseValues } from './fill-phrase.ts';

// Beside these words left and right mean a side of the body, which is the other one for the other hand.
const parts =
  'hand|wrist|arm|elbow|shoulder|hip|thigh|knee|leg|heel|foot|toe|ankle|side|ear|eye|collarbone|trouser pocket|pocket';
const sided = new RegExp(`\\b(left|right)(?= (?:${parts})\\b)`, 'g');

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Values too short or too common to be told from other words of a sentence. */
const worthFinding = (name: string, value: string): boolean =>
  name === 'player' ? value.length > 1 : name.startsWith('measured:') || name === 'drill' || name === 'club';

/**
 * The words of a reply with variables where they told a name, a club, a drill, a count or a measurement of this player,
 * and sides of the body by lead and trail: filled again they fit the next player. What is not found stays as it is.
 *
 * @param hand - the player's
 */
export const templateOf = (words: string, values: PhraseValues, hand: 'right' | 'left'): string => {
  const { count, balls } = values;
  const told = Object.entries(values)
    .filter(([name, value]) => worthFinding(name, value))
    .sort(([, a], [, b]) => b.length - a.length);
  let text =
    count === undefined || balls === undefined
      ? words
      : words.replaceAll(`${count} of your ${balls} balls`, '{count} of your {balls} balls');
  for (const [name, value] of told) {
    text = text.replace(new RegExp(`(?<![\\w{:-])${escaped(value)}(?![\\w}])`, 'g'), `{${name}}`);
  }
  return text.replace(sided, (side) => (side === hand ? '{trail}' : '{lead}'));
};
