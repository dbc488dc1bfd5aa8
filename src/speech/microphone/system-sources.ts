/** Recording programs that systems bring along: ALSA's and PulseAudio's (which PipeWire answers too). */
import { SAMPLE_RATE } from '../recogniser/sample-rate.ts';
import type { MicrophoneDevice, MicrophoneSource } from './microphone.ts';
import { openRawCommand, outputOf } from './raw-command.ts';

export const alsaSource: MicrophoneSource = {
  name: 'arecord',
  devices: async () => alsaDevices(await outputOf({ program: 'arecord', words: ['-L'] })),
  open: (device) =>
    openRawCommand(
      {
        program: 'arecord',
        words: [
          '--quiet',
          '--file-type=raw',
          '--format=S16_LE',
          `--rate=${SAMPLE_RATE}`,
          '--channels=1',
          ...(device === undefined ? [] : [`--device=${device}`]),
          '-',
        ],
      },
      device ?? 'the default microphone',
    ),
};

export const pulseSource: MicrophoneSource = {
  name: 'parecord',
  devices: async () =>
    pulseDevices(await outputOf({ program: 'pactl', words: ['list', 'short', 'sources'] })),
  open: (device) =>
    openRawCommand(
      {
        program: 'parecord',
        words: [
          '--raw',
          '--format=s16le',
          `--rate=${SAMPLE_RATE}`,
          '--channels=1',
          '--latency-msec=100',
          ...(device === undefined ? [] : [`--device=${device}`]),
        ],
      },
      device ?? 'the default microphone',
    ),
};

/** Names stand at the margin, words about them below; `null` gives silence and is no microphone. */
export function alsaDevices(listed: string): readonly MicrophoneDevice[] {
  const devices: { name: string; about?: string }[] = [];
  for (const line of listed.split('\n')) {
    const last = devices.at(-1);
    if (line.trim() === '') continue;
    if (!/^\s/.test(line)) devices.push({ name: line.trim() });
    else if (last) last.about = [last.about, line.trim()].filter(Boolean).join(', ');
  }
  return devices.filter(({ name }) => name !== 'null');
}

/** Number, name, driver, format and state, with tabs between. A monitor hears what is played, not the room. */
export function pulseDevices(listed: string): readonly MicrophoneDevice[] {
  return listed
    .split('\n')
    .map((line) => line.split('\t'))
    .flatMap(([, name, , format]) =>
      name && !name.endsWith('.monitor') ? [{ name, ...(format ? { about: format } : {}) }] : [],
    );
}
