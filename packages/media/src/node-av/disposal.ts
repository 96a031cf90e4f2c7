/** What must be closed again, in the order it was opened. */
export type Disposal = (() => unknown)[];

/** Closes everything, the last opened first. */
export async function disposeOf(disposal: Disposal): Promise<void> {
  for (const end of disposal.reverse()) await end();
}
