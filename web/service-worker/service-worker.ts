/** Written in front of this file by `vite/precache.ts`: the page's files and a hash over all of them. */
declare const precache: { readonly version: string; readonly files: readonly string[] };
declare const self: ServiceWorkerGlobalScope;

const family = 'loopwright ';
const own = family + precache.version;
const page = '/';
/** What lies in these is a file or data, never a place of the page. */
const notPlaces = ['/assets/', '/icons/', '/api/', '/plant/'];

// A new version waits beside the running one until the page says so: what runs is never swapped under a person's hands.
self.addEventListener('install', (event) => event.waitUntil(fetchAll()));
self.addEventListener('activate', (event) => event.waitUntil(takeOver()));
self.addEventListener('message', (event) => {
  if (event.data === 'take-over') event.waitUntil(self.skipWaiting());
});
self.addEventListener('fetch', (event) => {
  const file = fileFor(event.request);
  if (file !== undefined) event.respondWith(kept(file, event.request));
});

/** All files or none. A file whose name carries its hash and that an older version holds is not fetched again. */
async function fetchAll(): Promise<void> {
  const cache = await caches.open(own);
  await Promise.all(
    precache.files.map(async (file) => {
      const known = file.startsWith('/assets/') ? await caches.match(file) : undefined;
      await (known === undefined ? cache.add(new Request(file, { cache: 'reload' })) : cache.put(file, known));
    }),
  );
  await checkPage(cache);
}

/** Where the server changed while files were fetched, the page is another version's: then nothing is installed. */
async function checkPage(cache: Cache): Promise<void> {
  const text = await (await cache.match(page))?.text();
  if (text?.includes(precache.version)) return;
  await caches.delete(own);
  throw new Error(`the page is not that of version ${precache.version}`);
}

/** Keeps the version before this one too: a tab that still shows it may ask for a part it has not fetched yet. */
async function takeOver(): Promise<void> {
  const older = (await caches.keys()).filter((name) => name.startsWith(family) && name !== own);
  await Promise.all(older.slice(0, -1).map((name) => caches.delete(name)));
  await self.clients.claim();
}

/** The kept file that answers a request; undefined for what only the server knows. */
function fileFor({ method, mode, url }: Request): string | undefined {
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== self.location.origin) return undefined;
  if (precache.files.includes(pathname) || pathname.startsWith('/assets/')) return pathname;
  const isFile = /^\/[^/]+\.[a-z0-9]+$/i.test(pathname) || notPlaces.some((folder) => pathname.startsWith(folder));
  return mode === 'navigate' && !isFile ? page : undefined;
}

async function kept(file: string, request: Request): Promise<Response> {
  const cache = await caches.open(own);
  return (await cache.match(file)) ?? (await caches.match(file)) ?? fetch(request);
}
