import { useRef } from 'react';

interface FileButtonProps {
  readonly label: string;
  /** What the browser offers first, such as `.csv,.xlsx`. */
  readonly accept: string;
  readonly main?: boolean;
  readonly onFile: (file: File) => void;
}

/** Chooses one file. The browser's own entry is too small to hit and speaks its own language. */
export function FileButton({ label, accept, main = false, onFile }: FileButtonProps) {
  const entry = useRef<HTMLInputElement>(null);
  const choose = () => {
    const { current } = entry;
    const [file] = current?.files ?? [];
    if (file !== undefined) onFile(file);
    // The same file can be chosen again once it was mended.
    if (current !== null) current.value = '';
  };
  return (
    <>
      <button type="button" className={main ? 'button main-action' : 'button'} onClick={() => entry.current?.click()}>
        {label}
      </button>
      <input ref={entry} type="file" accept={accept} hidden onChange={choose} />
    </>
  );
}
