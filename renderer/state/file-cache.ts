const databaseName = "wallyear.files";
const storeName = "texts";

/**
 * Copies of weather and logger files by name, so that a project opened again finds the year it was drawn with. Only a convenience:
 * where the browser keeps nothing, the user is asked for the file.
 */
function withStore<Result>(
  mode: IDBTransactionMode,
  act: (store: IDBObjectStore) => IDBRequest<Result>,
): Promise<Result> {
  return new Promise((resolve, reject) => {
    const refuse = (request: IDBRequest): void => reject(request.error ?? new Error("the browser keeps no files"));
    const opening = indexedDB.open(databaseName, 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(storeName);
    opening.onerror = () => refuse(opening);
    opening.onsuccess = () => {
      const database = opening.result;
      const request = act(database.transaction(storeName, mode).objectStore(storeName));
      request.onsuccess = () => {
        resolve(request.result);
        database.close();
      };
      request.onerror = () => {
        refuse(request);
        database.close();
      };
    };
  });
}

export const cacheFile = (name: string, text: string): Promise<void> =>
  withStore("readwrite", (store) => store.put(text, name)).then(
    () => undefined,
    () => undefined,
  );

/** The text last kept under this name; null where there is none. */
export const cachedFile = (name: string): Promise<string | null> =>
  withStore<unknown>("readonly", (store) => store.get(name)).then(
    (text) => (typeof text === "string" ? text : null),
    () => null,
  );
