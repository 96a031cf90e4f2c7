/** Every variable of a phrase that is not of one measurement. */
export const plainVariables = [
  'player',
  'club',
  'fault',
  'count',
  'balls',
  'cause',
  'drill',
  // How many swings in ten meet the ground first, and how much farther forward the low point belongs.
  'often',
  'forward',
] as const;

/**
 * What can be told of a measurement, before a colon and its key: its size, its size with doubt, which way it lies, and the
 * band it is read against in words.
 */
export const measuredVariables = ['measured', 'doubted', 'way', 'band'] as const;

const variable = /\{([a-z]+(?::[a-z-]+)?)\}/g;
/** Left and right are put in by the hand, later. */
const byHand = new Set(['lead', 'trail']);

/** The variables a phrase asks for, each once, in their order. */
export const variablesIn = (text: string): readonly string[] => [
  ...new Set([...text.matchAll(variable)].flatMap(([, name = '']) => (byHand.has(name) ? [] : [name]))),
];

/** The measurement a variable tells of; null: of none, or in a way that does not exist. */
export const keyOfVariable = (name: string): string | null => {
  const [how = '', key] = name.split(':');
  return key !== undefined && measuredVariables.some((one) => one === how) ? key : null;
};
