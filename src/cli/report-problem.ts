/** The one place that prints failures. */
import { CommanderError } from 'commander';
import { EXIT, type ExitCode, Problem } from '../problem.ts';
import { tell } from './print.ts';
import { UsageFailure } from './usage-failure.ts';

const CODES: Readonly<Record<string, string>> = {
  'commander.unknownCommand': 'command-unknown',
  'commander.unknownOption': 'option-unknown',
  'commander.missingArgument': 'argument-missing',
  'commander.help': 'argument-missing',
  'commander.missingMandatoryOptionValue': 'option-missing',
  'commander.optionMissingArgument': 'option-value-missing',
  'commander.excessArguments': 'arguments-excess',
  'commander.invalidArgument': 'value-invalid',
  'commander.conflictingOption': 'options-conflict',
};

/** What commander says, in the shape of the project's own problems. */
function usageProblem({ failure, call, longer }: UsageFailure): Problem {
  if (failure.code === 'commander.help') return commandNotWhole(call, longer);
  if (failure.code === 'commander.excessArguments' && longer.length > 0) return noSuchWord(call, longer);
  const [first = '', suggestion] = failure.message.replace(/^error: /, '').split('\n');
  const near = /Did you mean (?:one of )?(.+?)\??\)/.exec(suggestion ?? '')?.[1];
  return new Problem(first.replace(/\.$/, '').replace(/'([^']*)'/g, '"$1"'), {
    code: CODES[failure.code] ?? 'usage',
    exitCode: EXIT.usage,
    next: near ? `did you mean ${near}?` : `see: ${call} --help`,
  });
}

/** Commander shows the help of a command that does nothing by itself, and says no word. */
function commandNotWhole(call: string, longer: readonly string[]): Problem {
  return new Problem(`a word is missing behind "${call}"`, {
    code: 'argument-missing',
    exitCode: EXIT.usage,
    next: `${listOf(longer)}; see: ${call} --help`,
  });
}

/** A command that does something alone, and takes only certain words behind it. */
function noSuchWord(call: string, longer: readonly string[]): Problem {
  return new Problem(`"${call}" takes no such word behind it`, {
    code: 'arguments-excess',
    exitCode: EXIT.usage,
    next: `it goes alone, or: ${listOf(longer)}; see: ${call} --help`,
  });
}

const listOf = (calls: readonly string[]): string => calls.map((call) => `${call} …`).join(', ');

/** What went wrong where nobody foresaw it. */
function unexpected(error: unknown): Problem {
  const reason = error instanceof Error ? error.message : String(error);
  return new Problem(`something unexpected went wrong: ${reason}`, {
    code: 'unexpected',
    exitCode: EXIT.unexpected,
    kept: 'everything taken before is in the project folder',
    next: 'try again; with --verbose the place of the failure is printed',
    cause: error,
  });
}

/** Prints a problem: what happened, what was kept, what to do next. */
export function printProblem(problem: Problem): void {
  const lines = [`hearwright: ${problem.message}`];
  if (problem.kept) lines.push(`  kept   ${problem.kept}`);
  if (problem.next) lines.push(`  next   ${problem.next}`);
  tell(lines.join('\n'));
}

/** Prints whatever was thrown and returns the exit code that it means. Help and version are no failures. */
export function reportProblem(error: unknown, verbose: boolean): ExitCode {
  if (error instanceof CommanderError && error.exitCode === 0) return EXIT.done;
  const problem =
    error instanceof Problem
      ? error
      : error instanceof UsageFailure
        ? usageProblem(error)
        : unexpected(error);
  printProblem(problem);
  const cause = problem.cause ?? (problem.exitCode === EXIT.unexpected ? problem : undefined);
  if (verbose && cause instanceof Error && cause.stack) tell(cause.stack);
  return problem.exitCode;
}
