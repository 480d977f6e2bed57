/** Says on stderr that something goes on: in place on a terminal, every ten seconds in a log. */
export function progress(what) {
  const onTerminal = process.stderr.isTTY === true;
  let shown = false;
  if (!onTerminal) process.stderr.write(`${what} ...\n`);
  return {
    tick(seconds) {
      if (onTerminal) {
        process.stderr.write(`\r${what} ... ${seconds} s`);
        shown = true;
      } else if (seconds % 10 === 0) process.stderr.write(`${what} ... ${seconds} s\n`);
    },
    end() {
      if (shown) process.stderr.write('\n');
    },
  };
}
