import type { SessionPlan } from './session-plan.ts';

const days: Readonly<Record<number, string>> = {
  1: 'One day a week',
  2: 'Two days a week',
  3: 'Three days a week',
  4: 'Four days a week',
  5: 'Five days a week',
  6: 'Six days a week',
  7: 'Every day',
};

const oneOf: Readonly<Record<number, string>> = { 2: 'every second swing', 3: 'one swing of three' };

/**
 * A session in a student's sentences: when, how many, what to film, what comes after.
 *
 * @param week - days a week, null where they were not planned, and minutes of a session
 */
export const sessionWords = (
  plan: SessionPlan,
  week: { readonly daysPerWeek: number | null; readonly minutes: number },
): readonly string[] => {
  const { blocks, restSeconds, filmOneOf, mixed, heavy } = plan;
  const often = week.daysPerWeek === null ? null : days[week.daysPerWeek];
  const [only, ...more] = blocks;
  const rest = restSeconds === 60 ? 'a minute' : `${restSeconds} seconds`;
  const swings =
    more.length === 0
      ? `${only ?? 0} swings, without haste.`
      : `Blocks of ${blocks.slice(0, -1).join(', ')} and ${blocks.at(-1)} swings, with ${rest} of rest after each.`;
  return [
    often === null || often === undefined
      ? `${week.minutes} minutes each time.`
      : `${often}, ${week.minutes} minutes each time.`,
    swings,
    `Film ${oneOf[filmOneOf] ?? `one swing of ${filmOneOf}`} and look at it before the next.`,
    ...(mixed ? ['Change club or target from swing to swing.'] : []),
    ...(heavy ? ['Full swings ask for rest: leave a day free after each such day.'] : []),
  ];
};
