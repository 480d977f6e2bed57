import '../../../../src/style/style.css';
import { runChange } from '@loopwright/records/run';
import { readyLanguage } from '@loopwright/words';
import { createRoot } from 'react-dom/client';
import { photoOf } from '../../../../src/photo/photo-of.ts';
import { PhotoTake } from '../../../../src/photo/photo-take.tsx';
import { PhotoThumb } from '../../../../src/photo/photo-thumb.tsx';
import { type Photo, takePhoto } from '../../../../src/photo/take-photo.ts';
import { loadSettings } from '../../../../src/settings/settings.ts';
import { SettingsProvider } from '../../../../src/settings/use-settings.tsx';
import { SpeechProvider } from '../../../../src/speech/use-speech.tsx';
import { openStore } from '../../../../src/store/open-store.ts';
import type { PlantStore } from '../../../../src/store/plant-store.ts';
import { StoreProvider } from '../../../../src/store/use-store.tsx';

/** What the tests reach from outside of the page. */
export interface PhotoPage {
  readonly store: PlantStore;
  readonly takePhoto: typeof takePhoto;
  readonly photoOf: typeof photoOf;
}

/** Keeps a photo as a run does: the event and the picture it names in one transaction. */
async function keep(store: PlantStore, { sha256, bytes, width_px, height_px, blob }: Photo): Promise<void> {
  const thing = { run: 'run-1', face: 'roller', sha256, bytes, width_px, height_px } as const;
  await store.append([{ ...runChange('run.photo-taken', thing), blobs: [blob] }]);
}

async function tell(path: string, body: unknown): Promise<void> {
  await fetch(path, { method: 'POST', body: JSON.stringify(body) });
}

/** A picture of many colours, chosen as a person would choose it. */
async function choosePicture(): Promise<void> {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [2400, 1800];
  const context = canvas.getContext('2d');
  for (let i = 0; i < 400 && context !== null; i++) {
    context.fillStyle = `hsl(${Math.random() * 360} 80% 50%)`;
    context.fillRect(Math.random() * 2400, Math.random() * 1800, 300, 200);
  }
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  const chosen = new DataTransfer();
  chosen.items.add(new File([blob ?? ''], 'splice.png', { type: 'image/png' }));
  const entry = document.querySelector<HTMLInputElement>('input[capture]');
  if (entry === null) throw new Error('nothing to choose with');
  entry.files = chosen.files;
  entry.dispatchEvent(new Event('change', { bubbles: true }));
}

/** Takes photos until the browser is killed; of each it says that it is kept only when the screen says so. */
async function takeForEver(run: string): Promise<void> {
  for (;;) {
    lastTaken = '';
    await choosePicture();
    await until(() => lastTaken !== '' && document.querySelector('[data-photo=kept]') !== null);
    void tell('/kept', { sha256: lastTaken, run });
  }
}

async function until(holds: () => boolean): Promise<void> {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve));
}

async function foundAfterKill(store: PlantStore): Promise<unknown> {
  const { broken, brokenBlobs } = await store.verify();
  const { size } = store.current();
  const sure = new URLSearchParams(location.search).get('sure')?.split(',') ?? [];
  const photos = await Promise.all(sure.filter(Boolean).map((sha256) => photoOf(store, sha256)));
  return { size, broken, brokenBlobs, there: photos.filter((photo) => photo !== undefined).length };
}

let lastTaken = '';
const root = document.getElementById('root');
if (root === null) throw new Error('the page has no root');
const asked = new URLSearchParams(location.search);
const store = await openStore({ reserve_bytes: 0 });
if (store.current().empty) await store.startPlant('Mill');
const settings = loadSettings();
document.documentElement.dataset['theme'] = settings.theme;
await readyLanguage(settings.language);
const onTaken = async (photo: Photo) => {
  await keep(store, photo);
  lastTaken = photo.sha256;
};
createRoot(root).render(
  <SettingsProvider>
    <SpeechProvider>
      <StoreProvider opening={Promise.resolve(store)} opened={store}>
        <main className="pane">
          <h1>Mill</h1>
          <PhotoTake face="roller" kept={undefined} onTaken={onTaken} />
          {asked.has('show') ? <PhotoThumb sha256={asked.get('show') ?? ''} label="Pulley side" /> : null}
        </main>
      </StoreProvider>
    </SpeechProvider>
  </SettingsProvider>,
);
const page: PhotoPage = { store, takePhoto, photoOf };
Object.assign(window, { page });
const run = asked.get('run');
if (run !== null) {
  await tell('/found', await foundAfterKill(store));
  await until(() => document.querySelector('input[capture]') !== null);
  await takeForEver(run);
}
