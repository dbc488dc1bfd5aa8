/** Finds a microphone: the system's own programs first, then the bundled way. */
import type { Result } from '../../problem.ts';
import { bundledSource } from './bundled-source.ts';
import type { Microphone, MicrophoneDevice, MicrophoneSource } from './microphone.ts';
import { noMicrophone } from './microphone-problems.ts';
import { alsaSource, pulseSource } from './system-sources.ts';

const SOURCES: readonly MicrophoneSource[] = [alsaSource, pulseSource, bundledSource];

/** Opens `device`, or the system's own choice, by the first source that gives sound. */
export async function openMicrophone(
  device?: string,
  sources: readonly MicrophoneSource[] = SOURCES,
): Promise<Result<Microphone>> {
  const reasons: [string, string][] = [];
  for (const source of sources) {
    const opened = await source.open(device);
    if (opened.ok) return opened;
    reasons.push([source.name, opened.problem.message]);
  }
  return { ok: false, problem: noMicrophone(device, reasons) };
}

export type KnownDevice = MicrophoneDevice & { readonly source: string };

/** Devices of every source; one that two sources know stands once, under the source that is tried first. */
export async function microphones(
  sources: readonly MicrophoneSource[] = SOURCES,
): Promise<readonly KnownDevice[]> {
  const known = new Map<string, KnownDevice>();
  for (const source of sources) {
    for (const device of await source.devices()) {
      if (!known.has(device.name)) known.set(device.name, { ...device, source: source.name });
    }
  }
  return [...known.values()];
}
