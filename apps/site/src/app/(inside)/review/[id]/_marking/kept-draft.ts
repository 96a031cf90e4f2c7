/** Drafts on this device, for what the server does not have yet: a crash, a closed tab or a lost signal loses nothing. */
const prefix = 'ballfirst.draft.';

export const keepDraft = (key: string, draft: unknown): void => {
  try {
    localStorage.setItem(prefix + key, JSON.stringify(draft));
  } catch {
    // A full or forbidden store: the server's copy has to do.
  }
};

export const dropDraft = (key: string): void => {
  try {
    localStorage.removeItem(prefix + key);
  } catch {
    // As above.
  }
};

/** A draft that was kept, or null where there is none or it is not what it should be. */
export const readDraft = <T>(key: string, isDraft: (found: unknown) => found is T): T | null => {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(prefix + key) ?? 'null');
    return isDraft(found) ? found : null;
  } catch {
    return null;
  }
};
