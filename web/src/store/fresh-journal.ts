/** Until the browser has put away its old journal [ms]; it takes about 10 ms and says nothing when it is done. */
const settling_ms = 150;

/**
 * Makes Chromium begin a new journal before this page writes its first event.
 *
 * A browser killed in the middle of a write leaves a torn record at the end of the journal of its storage. At the next
 * start it passes over that end, but goes on writing behind it; at the start after that it takes the journal for
 * damaged and throws all stored data of the page away. Deleting a database makes it put the journal away at once and
 * begin another, so that nothing is ever written behind a torn end. Other engines lose nothing but a few milliseconds.
 *
 * @param name - of a database that nothing else uses
 */
export async function beginFreshJournal(name: string): Promise<void> {
  if (!/Chrome\//.test(navigator.userAgent)) return;
  await ended(openScratch(name));
  await ended(indexedDB.deleteDatabase(name));
  await new Promise((resolve) => setTimeout(resolve, settling_ms));
}

function openScratch(name: string): IDBOpenDBRequest {
  const request = indexedDB.open(name, 1);
  request.onupgradeneeded = () => request.result.createObjectStore('scratch').put(0, 0);
  request.onsuccess = () => request.result.close();
  return request;
}

// Whatever goes wrong here goes wrong again, and is said, when an event is written.
function ended(request: IDBOpenDBRequest): Promise<void> {
  return new Promise((resolve) => {
    request.addEventListener('success', () => resolve());
    request.addEventListener('error', () => resolve());
    request.addEventListener('blocked', () => resolve());
  });
}
