import { Refusal } from '@loopwright/engine/refusal';
import { type ArchiveContent, checkFileSize, readArchive as readBytes } from '@loopwright/records/archive';
import { StoreError, type StoreFault, storeFaults } from './store-error.ts';

/**
 * Reads an export file: an archive, or the log alone.
 *
 * @throws StoreError `file-too-large`, `file-many-entries`, `file-ratio`, `file-path`, `file-no-archive`, `file-no-log`
 */
export async function readArchive(file: Blob): Promise<ArchiveContent> {
  try {
    checkFileSize(file.size);
    return readBytes(new Uint8Array(await file.arrayBuffer()));
  } catch (cause) {
    throw cause instanceof Refusal && isStoreFault(cause.code) ? storeErrorFor(cause.code, cause) : cause;
  }
}

function isStoreFault(code: string): code is StoreFault {
  return (storeFaults as readonly string[]).includes(code);
}

const longestName = 60;

/** As a person on the floor reads it: sizes in MB, long names shortened. */
function storeErrorFor(code: StoreFault, { data }: Refusal): StoreError {
  const shown: Record<string, string | number> = {};
  for (const [name, value] of Object.entries(data))
    if (typeof value === 'number') shown[name] = data['unit'] === 'bytes' ? Math.ceil(value / 2 ** 20) : value;
    else if (name === 'name') shown[name] = shortened(String(value));
  return new StoreError(code, shown);
}

function shortened(name: string): string {
  return name.length > longestName ? `${name.slice(0, longestName)}…` : name;
}
