/** A call that commander cannot read, with the command that it was meant for. */
import type { Command, CommanderError } from 'commander';

export class UsageFailure extends Error {
  /** What was typed of the command: "hearwright work out". */
  readonly call: string;
  /** Commands that stand behind it, as they are typed: "hearwright checks add". */
  readonly longer: readonly string[];

  constructor(
    readonly failure: CommanderError,
    command: Command,
  ) {
    super(failure.message, { cause: failure });
    this.call = callOf(command);
    this.longer = command.commands.map((one) => callOf(one));
  }
}

const callOf = (command: Command): string =>
  command.parent ? `${callOf(command.parent)} ${command.name()}` : command.name();
