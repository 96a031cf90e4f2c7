const open = (): Promise<IDBDatabase> =>
  new Promise((resolve, reject) => {
    const asked = indexedDB.open('ballfirst', 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore('files');
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });

const within = async <T>(
  mode: IDBTransactionMode,
  act: (store: IDBObjectStore) => IDBRequest<T>,
): Promise<T> => {
  const database = await open();
  try {
    return await new Promise<T>((resolve, reject) => {
      const asked = act(database.transaction('files', mode).objectStore('files'));
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
  } finally {
    database.close();
  }
};

/**
 * The chosen video kept in the browser's own store, so that an upload goes on after a reload or a closed tab.
 * A browser that refuses to keep it (private window, no room) asks for the same file again instead.
 */
export const keptFile = {
  async keep(owner: string, file: File): Promise<boolean> {
    return within('readwrite', (store) => store.put(file, owner)).then(
      () => true,
      () => false,
    );
  },
  async find(owner: string): Promise<File | null> {
    return within<unknown>('readonly', (store) => store.get(owner)).then(
      (found) => (found instanceof File ? found : null),
      () => null,
    );
  },
  async forget(owner: string): Promise<void> {
    await within('readwrite', (store) => store.delete(owner)).catch(() => undefined);
  },
};
