/** The browser's own question whether to install the app; only some browsers have it. */
interface InstallQuestion extends Event {
  prompt(): Promise<unknown>;
}

let question: InstallQuestion | undefined;
const listeners = new Set<() => void>();

/** Keeps the browser's question until the person asks for it. */
export function waitForInstallQuestion(): void {
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    keep(event as InstallQuestion);
  });
  addEventListener('appinstalled', () => keep(undefined));
}

export function canInstall(): boolean {
  return question !== undefined;
}

export function onInstallChange(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Puts the browser's question; it may be put once. */
export async function install(): Promise<void> {
  const put = question;
  keep(undefined);
  await put?.prompt();
}

function keep(now: InstallQuestion | undefined): void {
  question = now;
  for (const listener of listeners) listener();
}
