// Runs one command: quietly (its lines are kept and shown only when it fails) or with the terminal handed to it.
import { spawn } from 'node:child_process';
import { constants } from 'node:os';
import { Stop } from './stop.mjs';

/** Compilers put the cause first, package managers last. */
const SHOWN = { first: 12, last: 15 };

/**
 * Runs a command to its end without printing its output.
 * @param {string} file @param {readonly string[]} args
 * @param {{ cwd: string, env: NodeJS.ProcessEnv, failure: string }} options `failure` is the sentence shown when it fails
 * @returns {Promise<string>} what it printed
 */
export function runQuietly(file, args, { cwd, env, failure }) {
  return new Promise((resolve, reject) => {
    const child = spawn(file, args, { cwd, env: { ...env, NO_COLOR: '1', FORCE_COLOR: '' }, stdio: ['ignore', 'pipe', 'pipe'] });
    let text = '';
    const keep = (chunk) => {
      text += chunk;
    };
    child.stdout.setEncoding('utf8').on('data', keep);
    child.stderr.setEncoding('utf8').on('data', keep);
    const release = passSignalsTo(child);
    const fail = (reason) => reject(new Stop(failure, { command: [file, ...args].join(' '), tail: [...shortened(text), reason] }));
    child.once('error', (error) => fail(error.message));
    child.once('close', (code, signal) => {
      release();
      if (code === 0) resolve(text);
      else fail(signal ? `ended by ${signal}` : `exit code ${code}`);
    });
  });
}

/** A signal to the launcher is meant for what it runs; gives the function that ends this. */
function passSignalsTo(child) {
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'];
  const passOn = (signal) => child.kill(signal);
  for (const signal of signals) process.on(signal, passOn);
  return () => {
    for (const signal of signals) process.off(signal, passOn);
  };
}

const ESCAPE = String.fromCharCode(27);
const COLOUR = new RegExp(`${ESCAPE}\\[[0-9;]*m`, 'g');

/**
 * The beginning and the end of what a program printed, without the colour codes that some print whatever they are told.
 * @param {string} text
 */
export function shortened(text) {
  const lines = text.replaceAll(COLOUR, '').split('\n').filter(Boolean);
  return lines.length <= SHOWN.first + SHOWN.last ? lines : [...lines.slice(0, SHOWN.first), '…', ...lines.slice(-SHOWN.last)];
}

/**
 * Hands the terminal to a command and gives its exit code. Signals are passed on, so that it can end in its own way.
 * @param {string} file @param {readonly string[]} args @param {{ cwd: string, env: NodeJS.ProcessEnv }} options
 * @returns {Promise<number>}
 */
export function handOver(file, args, { cwd, env }) {
  return new Promise((resolve, reject) => {
    const child = spawn(file, args, { cwd, env, stdio: 'inherit' });
    const release = passSignalsTo(child);
    child.once('error', (error) => reject(new Stop('A program could not be started.', { command: file, tail: [error.message] })));
    child.once('close', (code, signal) => {
      release();
      resolve(code ?? 128 + (signal ? constants.signals[signal] : 0));
    });
  });
}
