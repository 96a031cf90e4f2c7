const kinds = {
  day: { weekday: 'short', day: 'numeric', month: 'short' },
  moment: { weekday: 'short', day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' },
  clock: { hour: '2-digit', minute: '2-digit' },
} as const satisfies Record<string, Intl.DateTimeFormatOptions>;

export type InstantKind = keyof typeof kinds;

const made = new Map<string, Intl.DateTimeFormat>();

/** How an instant is written in a zone. Kept: making a format costs more than all that a row of a list shows. */
export const instantFormat = (as: InstantKind, timeZone: string): Intl.DateTimeFormat => {
  const name = `${as} ${timeZone}`;
  const known = made.get(name);
  if (known !== undefined) return known;
  const format = new Intl.DateTimeFormat('en-GB', { ...kinds[as], hourCycle: 'h23', timeZone });
  made.set(name, format);
  return format;
};
