import { copyFile, copyFolder, readCopyFile } from './copy-folder.ts';
import { readEntries } from './copy-form.ts';
import type { CopyAnswer, CopyAsk, CopySizes } from './copy-message.ts';

const newLine = 10;

/** A file that is written to in place and flushed; only a worker gets one, so the page's own types lack it. */
interface OpenFile {
  getSize(): number;
  read(bytes: Uint8Array, place: { readonly at: number }): number;
  write(bytes: Uint8Array, place: { readonly at: number }): number;
  flush(): void;
  close(): void;
}

type WorkerFile = FileSystemFileHandle & { createSyncAccessHandle(): Promise<OpenFile> };

let turn: Promise<unknown> = Promise.resolve();

self.onmessage = ({ data }: MessageEvent<CopyAsk>) => {
  turn = turn.then(async () => self.postMessage(await answerTo(data)));
};

async function answerTo(asked: CopyAsk): Promise<CopyAnswer> {
  const { ask, store } = asked;
  try {
    if (asked.do === 'measure') return { ask, kept: true, sizes: await sizesOf(store) };
    const folder = await copyFolder(store, true);
    for (const { sha256, bytes } of asked.blobs) await write(folder, sha256, new Uint8Array(await bytes.arrayBuffer()));
    await write(folder, copyFile, new TextEncoder().encode(asked.line), { atEnd: true });
    return { ask, kept: true };
  } catch {
    return { ask, kept: false };
  }
}

/** Writes bytes and returns when they are on the disk. */
async function write(
  folder: FileSystemDirectoryHandle,
  name: string,
  bytes: Uint8Array<ArrayBuffer>,
  { atEnd = false } = {},
): Promise<void> {
  const file = await folder.getFileHandle(name, { create: true });
  const access = await (file as WorkerFile).createSyncAccessHandle();
  try {
    const at = atEnd ? endOf(access) : 0;
    if (access.write(bytes, { at }) !== bytes.length) throw new Error('disk full');
    access.flush();
  } finally {
    access.close();
  }
}

/** Where to go on writing: behind what is there, and on a line of its own where a kill left half of one. */
function endOf(access: OpenFile): number {
  const size = access.getSize();
  if (size === 0) return 0;
  const last = new Uint8Array(1);
  access.read(last, { at: size - 1 });
  return last[0] === newLine ? size : size + access.write(Uint8Array.of(newLine), { at: size });
}

async function sizesOf(store: string): Promise<CopySizes> {
  const copy = await (await readCopyFile(store, copyFile))?.text();
  const seen = new Map<string, Set<number>>();
  for (const { rows } of readEntries(copy ?? '')) {
    for (const { plant, device, seq } of rows) {
      const log = `${plant}/${device}`;
      seen.set(log, (seen.get(log) ?? new Set<number>()).add(seq));
    }
  }
  return new Map([...seen].map(([log, sequence]) => [log, withoutGap(sequence)]));
}

function withoutGap(sequence: ReadonlySet<number>): number {
  let size = 0;
  while (sequence.has(size)) size += 1;
  return size;
}
