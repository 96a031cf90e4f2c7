/** A claim left alone lapses after so many minutes. */
export const claimMinutes = 30;
/** One that was handed over waits longer: the other coach may be in a lesson. */
export const handedMinutes = 240;

const after = (now: Date, minutes: number): Date => new Date(now.getTime() + minutes * 60_000);

/** When a claim made now would lapse. */
export const claimExpiry = (now: Date): Date => after(now, claimMinutes);

/** When a claim handed over now would lapse. */
export const handedExpiry = (now: Date): Date => after(now, handedMinutes);
