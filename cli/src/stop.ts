/** Ends a command with a sentence for the person and an exit code. 1: cannot be answered. 2: the call makes no sense. */
export class Stop extends Error {
  readonly exitCode: 1 | 2;

  constructor(sentence: string, exitCode: 1 | 2) {
    super(sentence);
    this.name = 'Stop';
    this.exitCode = exitCode;
  }
}
