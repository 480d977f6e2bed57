/** Runs the stages one after the other, says each one's name, seconds and verdict, and ends with the totals. */
export async function runStages(stages) {
  const total = { passed: 0, failed: 0 };
  const lines = [];
  for (const [index, stage] of stages.entries()) {
    console.log(`\n[${index + 1}/${stages.length}] ${stage.name}`);
    const started = Date.now();
    const result = await stage.run().catch(unexpected);
    if (result.output) console.log(result.output.trimEnd());
    const line = `${sign(result)} ${stage.name}: ${counts(result)}, ${Math.round((Date.now() - started) / 1000)} s${result.note ? `. ${result.note}` : ''}`;
    console.log(line);
    lines.push(line);
    total.passed += result.passed;
    total.failed += result.failed;
  }
  console.log(`\n${lines.join('\n')}\n\n${counts(total)}`);
  process.exitCode = total.failed === 0 ? 0 : 1;
}

function counts({ passed, failed }) {
  return `${passed} passed, ${failed} failed`;
}

function sign({ passed, failed }) {
  if (failed > 0) return 'FAILED ';
  return passed > 0 ? 'ok     ' : 'skipped';
}

function unexpected(problem) {
  return { passed: 0, failed: 1, note: problem.message };
}
