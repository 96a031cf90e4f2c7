import { variablesIn } from '@ballfirst/library/phrase-variables';

/** What stands for a variable of a phrase, by its name; a value that was not measured is not there. */
export type PhraseValues = Readonly<Record<string, string>>;

const optional = /\[\[(.*?)\]\]/gs;
const variable = /\{([a-z]+(?::[a-z-]+)?)\}/g;

const filled = (text: string, values: PhraseValues): string | null =>
  variablesIn(text).every((name) => values[name] !== undefined)
    ? text.replace(variable, (whole, name: string) => values[name] ?? whole)
    : null;

/**
 * A phrase with its values filled in. What stands in double brackets is left out where one of its values is missing.
 *
 * @returns null when a value outside the brackets is missing: then the phrase cannot be offered
 * @example fillPhrase('Your hips move [[{measured:x} ]]back.', {}) // 'Your hips move back.'
 */
export const fillPhrase = (text: string, values: PhraseValues): string | null => {
  const kept = text.replace(optional, (_, inside: string) => filled(inside, values) ?? '');
  return filled(kept, values);
};
