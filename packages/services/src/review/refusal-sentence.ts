import type { Refusal } from '@ballfirst/swing/measurement';

const sentences: Readonly<Record<Refusal['why'], string>> = {
  'marks-missing': 'Not all its marks are placed yet.',
  'no-scale': 'Mark ball and grip end at address: the club gives the scale.',
  'doubt-too-large': 'The doubt is larger than what it could tell.',
  'wrong-view': 'This view does not show it.',
  'not-for-this-length': 'A swing of this length does not have that moment.',
};

/** Why a measurement could not be made, for a coach. */
export const refusalSentence = (why: Refusal['why']): string => sentences[why];
