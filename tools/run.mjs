import { spawn } from 'node:child_process';
import { root } from './root.mjs';

/**
 * Runs a program to its end or its timeout and keeps what it wrote. `show` lets the person read along;
 * `onSecond` is called once a second with the seconds gone. The whole process group dies on a timeout.
 */
export function run(command, args, { timeout_s = 600, env = {}, show = false, cwd = root, onSecond } = {}) {
  return new Promise((resolve) => {
    const started = Date.now();
    const child = spawn(command, args, {
      cwd,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
      detached: process.platform !== 'win32',
    });
    let output = '';
    let timedOut = false;
    const keep = (stream) => (chunk) => {
      output = (output + chunk).slice(-400_000);
      if (show) stream.write(chunk);
    };
    child.stdout.on('data', keep(process.stdout));
    child.stderr.on('data', keep(process.stderr));
    const clock = setInterval(() => onSecond?.(Math.round((Date.now() - started) / 1000)), 1000);
    const timer = setTimeout(() => {
      timedOut = true;
      kill(child);
    }, timeout_s * 1000);
    const stop = () => kill(child);
    process.once('exit', stop);
    const end = (code, error) => {
      clearInterval(clock);
      clearTimeout(timer);
      process.removeListener('exit', stop);
      resolve({ code, output: error ? `${output}${error.message}\n` : output, timedOut, error, started });
    };
    child.on('error', (error) => end(127, error));
    child.on('close', (code) => end(code ?? 1));
  });
}

/** Runs a JavaScript program of an installed package with this Node. */
export function runNode(file, args, options) {
  return run(process.execPath, [file, ...args], options);
}

function kill(child) {
  try {
    if (process.platform === 'win32') child.kill();
    else process.kill(-child.pid, 'SIGKILL');
  } catch {
    child.kill('SIGKILL');
  }
}
