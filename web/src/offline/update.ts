import { isAnyTabBusy, isBusy, onBusyChange } from './busy.ts';
import { trustedAddress } from './trusted-address.ts';

/** What the app knows of itself as files. */
export interface AppFiles {
  /** `kept`: the app starts without a network. `not-kept`: not yet. `cannot`: this browser or address keeps none. */
  readonly offline: 'kept' | 'not-kept' | 'cannot';
  /** True when a newer version is kept and waits to be taken. */
  readonly newer: boolean;
}

const hour_ms = 3_600_000;

let state: AppFiles = { offline: 'not-kept', newer: false };
let registration: ServiceWorkerRegistration | undefined;
const listeners = new Set<() => void>();

export function appFiles(): AppFiles {
  return state;
}

export function onAppFilesChange(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Keeps the app's files on the device and watches for newer ones. */
export async function keepAppFiles(): Promise<void> {
  const { serviceWorker } = navigator as { readonly serviceWorker?: ServiceWorkerContainer };
  registration = await serviceWorker?.register(trustedAddress('worker', '/service-worker.js')).catch(() => undefined);
  if (serviceWorker === undefined || registration === undefined) return become({ offline: 'cannot', newer: false });
  watchWorkers(registration);
  watchTakeOver(serviceWorker);
  lookNowAndThen(registration);
}

/** Lets the waiting version take over; every tab then loads itself again. False while something goes on in some tab. */
export async function takeNewer(): Promise<boolean> {
  if (await isAnyTabBusy()) return false;
  registration?.waiting?.postMessage('take-over');
  return true;
}

function become(now: AppFiles): void {
  state = now;
  for (const listener of listeners) listener();
}

function watchWorkers(watched: ServiceWorkerRegistration): void {
  const look = () =>
    become({
      offline: watched.active === null ? 'not-kept' : 'kept',
      newer: watched.active !== null && watched.waiting !== null,
    });
  const follow = () => watched.installing?.addEventListener('statechange', look);
  watched.addEventListener('updatefound', follow);
  follow();
  look();
}

function watchTakeOver(container: ServiceWorkerContainer): void {
  // The first worker takes over a page that was loaded without one: that page is the same version.
  let isFirst = container.controller === null;
  container.addEventListener('controllerchange', () => {
    if (isFirst) isFirst = false;
    else loadAgainWhenFree();
  });
}

function loadAgainWhenFree(): void {
  if (!isBusy()) {
    location.reload();
    return;
  }
  const stop = onBusyChange(() => {
    if (isBusy()) return;
    stop();
    location.reload();
  });
}

// An installed app may stay open for weeks: it looks when it is shown or the network is back, at most once an hour.
function lookNowAndThen(watched: ServiceWorkerRegistration): void {
  let looked_ms = Date.now();
  const look = () => {
    if (document.visibilityState === 'hidden' || Date.now() - looked_ms < hour_ms) return;
    looked_ms = Date.now();
    // Without a network there is nothing newer to be had.
    void watched.update().catch(() => undefined);
  };
  document.addEventListener('visibilitychange', look);
  addEventListener('online', look);
}
