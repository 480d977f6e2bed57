/** What takes less is done before anybody wonders. */
const patience_ms = 1000;
const every_ms = 500;

/** Says on stderr how far a long computation is, so that what is on stdout stays JSON. */
export function progressOnStderr(): (done: number, of: number) => void {
  const started = Date.now();
  let last = 0;
  return (done, of) => {
    const now = Date.now();
    if (now - started < patience_ms || now - last < every_ms) return;
    last = now;
    process.stderr.write(`${done}/${of}\n`);
  };
}
