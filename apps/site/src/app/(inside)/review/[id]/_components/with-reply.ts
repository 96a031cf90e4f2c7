/** What the stage and its keys have to do with the reply. */
export type WithReply = {
  /** Whether a recorded talk-through goes with it. */
  readonly talkGoes: boolean;
  /** How long the recorded talk-through is; null: none is recorded. */
  readonly onTalk: (durationMs: number | null) => void;
  readonly onFilm: () => void;
};
