// `npm run bench [-- NAME… [--times N] [--record]]`: runs the benches and sets their figures beside the recorded ones.
// Figures are for reading: a slow machine is no failure. Only --record changes the file.
import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, totalmem } from 'node:os';
import { parseArgs } from 'node:util';
import type { Bench, Figures } from './bench.ts';
import { judgeBench } from './judge.bench.ts';
import { ledgerBench } from './ledger.bench.ts';
import { serverBench } from './server.bench.ts';

const BENCHES: readonly Bench[] = [judgeBench, ledgerBench, serverBench];
const BASELINES = new URL('./baselines.json', import.meta.url);

type Baselines = { machine: string; figures: Record<string, Figures> };

const machine = `${process.platform}-${process.arch}, ${cpus().length} × ${cpus()[0]?.model.trim() ?? 'unknown'}, ${Math.round(totalmem() / 2 ** 30)} GiB, Node ${process.version}`;

const { values, positionals } = parseArgs({
  options: { times: { type: 'string', default: '1' }, record: { type: 'boolean' } },
  allowPositionals: true,
});
const unknown = positionals.filter((name) => !BENCHES.some((bench) => bench.name === name));
const timesCount = Number(values.times);

if (unknown.length > 0 || !Number.isSafeInteger(timesCount) || timesCount < 1) {
  process.stderr.write(`jarwright: npm run bench -- [${BENCHES.map(({ name }) => name).join('] [')}] [--times N] [--record]\n`);
  process.exitCode = 1;
} else {
  await runAll(BENCHES.filter(({ name }) => positionals.length === 0 || positionals.includes(name)));
}

async function runAll(benches: readonly Bench[]): Promise<void> {
  const recorded: Baselines = JSON.parse(readFileSync(BASELINES, 'utf8'));
  process.stdout.write(`here      ${machine}\nrecorded  ${recorded.machine}\n`);
  const found: Record<string, Figures> = {};
  for (const bench of benches) {
    process.stdout.write(`\n${bench.name}: ${bench.says}\n`);
    const figures = await bench.run(timesCount);
    found[bench.name] = figures;
    for (const [name, figure] of Object.entries(figures)) process.stdout.write(row(name, figure, recorded.figures[bench.name]?.[name]));
  }
  if (!values.record) return;
  writeFileSync(BASELINES, `${JSON.stringify({ machine, figures: { ...recorded.figures, ...found } }, null, 2)}\n`);
}

function row(name: string, figure: number, before: number | undefined): string {
  return `  ${name.padEnd(24)}${String(figure).padStart(10)}${before === undefined ? '' : `   recorded ${before}, × ${(figure / before).toFixed(2)}`}\n`;
}
