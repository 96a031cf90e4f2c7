/** A claim left alone lapses after so many minutes. */
export const claimMinutes = 30;

/** When a claim made now would lapse. */
export const claimExpiry = (now: Date): Date => new Date(now.getTime() + claimMinutes * 60_000);
