/** Where the second copy of a store lies: in the browser's private file system, apart from its databases. */
const folderOf = (store: string) => `second-copy-${store}`;

/** The file of log lines; beside it each picture and curve under its hash. */
export const copyFile = 'log.txt';

/** Whether this browser can keep a second copy. */
export function canCopy(): boolean {
  const { storage } = navigator as { readonly storage?: StorageManager };
  return typeof Worker !== 'undefined' && typeof storage?.getDirectory === 'function';
}

/** The folder of the copy; made where it is not there yet only if `create` asks for it. */
export async function copyFolder(store: string, create: boolean): Promise<FileSystemDirectoryHandle> {
  const root = await navigator.storage.getDirectory();
  return root.getDirectoryHandle(folderOf(store), { create });
}

/** A file of the copy; undefined where there is none. */
export async function readCopyFile(store: string, name: string): Promise<Blob | undefined> {
  try {
    const folder = await copyFolder(store, false);
    return await (await folder.getFileHandle(name)).getFile();
  } catch {
    return undefined;
  }
}
