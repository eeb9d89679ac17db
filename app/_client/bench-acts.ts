// Calls of the bench that change something. Each carries a key of its own, made where the wish was: sent twice, it is done once.
import type {
  CheckInput,
  ClaimInput,
  CollectInput,
  CorrectionInput,
  FitnessInput,
  HeldJarInput,
  LabelPrintInput,
  MendInput,
  ReadingInput,
  ReasonInput,
  ReleaseInput,
  StepInput,
  VoidInput,
} from '#lib/contracts/bench-acts.ts';
import type { BenchOutput, FitnessOutput } from '#lib/contracts/bench-view.ts';
import type { Reply } from './send.ts';
import { send } from './send.ts';

type Answer = Promise<Reply<BenchOutput>>;

export const claim = (input: ClaimInput): Answer => send('/api/bench/claim', input);
export const giveBack = (input: ReasonInput): Answer => send('/api/bench/give-back', input);
export const takeOver = (input: ReasonInput): Answer => send('/api/bench/take-over', input);
export const closeOrder = (input: ReasonInput): Answer => send('/api/bench/close', input);
export const resume = (input: ReasonInput): Answer => send('/api/bench/resume', input);
export const decideHeldJar = (input: HeldJarInput): Answer => send('/api/bench/held-jar', input);
export const confirm = (input: StepInput): Answer => send('/api/bench/step', input);
export const weigh = (input: ReadingInput): Answer => send('/api/bench/reading', input);
export const takeBack = (input: VoidInput): Answer => send('/api/bench/void', input);
export const mend = (input: MendInput): Answer => send('/api/bench/mend', input);
export const correctPh = (input: CorrectionInput): Answer => send('/api/bench/ph-correction', input);
export const check = (input: CheckInput): Answer => send('/api/bench/check', input);
export const release = (input: ReleaseInput): Answer => send('/api/bench/release', input);
export const printLabel = (input: LabelPrintInput): Answer => send('/api/bench/label-print', input);
export const collect = (input: CollectInput): Answer => send('/api/bench/collect', input);
export const checkFitness = (input: FitnessInput): Promise<Reply<FitnessOutput>> => send('/api/bench/fitness', input);
