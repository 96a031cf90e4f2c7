/** A failure a person can act on: its message is the one sentence that is printed, without a stack. */
export class Sentence extends Error {}
