// One TypeScript program over production code, and over planted files that exist only in memory: building it is the slow part, so it is built once.
import { dirname, join } from 'node:path';
import ts from 'typescript';
import { top } from './tree.ts';

/** The sources by path from the top of the tree, with their checker; `errorsIn` lists what the compiler says against one file. */
export type Checked = {
  readonly checker: ts.TypeChecker;
  readonly sources: ReadonlyMap<string, ts.SourceFile>;
  readonly errorsIn: (path: string) => readonly string[];
};

function optionsOf(): ts.CompilerOptions {
  const path = join(top, 'tsconfig.json');
  const read = ts.readConfigFile(path, ts.sys.readFile);
  return { ...ts.parseJsonConfigFileContent(read.config, ts.sys, dirname(path)).options, incremental: false, noEmit: true };
}

/** `paths` are read from the disk; `planted` (path → text) stand beside them and may import from them. */
export function checkedProgram(paths: readonly string[], planted: Readonly<Record<string, string>>): Checked {
  const options = optionsOf();
  const host = ts.createCompilerHost(options, true);
  const inMemory = new Map(Object.entries(planted).map(([path, text]) => [join(top, path), text]));
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (path) => inMemory.has(path) || fileExists(path);
  host.readFile = (path) => inMemory.get(path) ?? readFile(path);
  host.getSourceFile = (path, version, ...rest) => {
    const text = inMemory.get(path);
    return text === undefined ? getSourceFile(path, version, ...rest) : ts.createSourceFile(path, text, version, true);
  };
  const wanted = [...paths, ...Object.keys(planted)];
  const program = ts.createProgram(
    wanted.map((path) => join(top, path)),
    options,
    host,
  );
  const sources = new Map<string, ts.SourceFile>();
  for (const path of wanted) {
    const source = program.getSourceFile(join(top, path));
    if (source !== undefined) sources.set(path, source);
  }
  const errorsIn = (path: string): string[] =>
    program.getSemanticDiagnostics(sources.get(path)).map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '));
  return { checker: program.getTypeChecker(), sources, errorsIn };
}
