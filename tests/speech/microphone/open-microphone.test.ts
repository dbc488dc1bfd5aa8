import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Microphone } from '../../../src/speech/microphone/microphone.ts';
import { microphones, openMicrophone } from '../../../src/speech/microphone/open-microphone.ts';
import { alsaDevices, alsaSource, pulseDevices } from '../../../src/speech/microphone/system-sources.ts';
import { type StandIn, standInMicrophone } from '../../kit/stand-in-microphone.ts';

let folder: string;
let path: string | undefined;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'microphone-'));
  path = process.env.PATH;
});
afterEach(() => {
  process.env.PATH = path;
  rmSync(folder, { recursive: true, force: true });
});

const ramp = Int16Array.from({ length: 16_000 }, (_, place) => place - 8_000);
const ALSA = [alsaSource];

function plugIn(standIn: Partial<StandIn> = {}): void {
  process.env.PATH = standInMicrophone(folder, { sound: ramp, pace: 10, ...standIn });
}

async function opened(device?: string): Promise<Microphone> {
  const microphone = await openMicrophone(device, ALSA);
  if (!microphone.ok) throw microphone.problem;
  return microphone.value;
}

test('every sample comes through in order, until the microphone is stopped', async () => {
  plugIn();
  const microphone = await opened();
  const heard: number[] = [];
  for await (const piece of microphone.sound) {
    heard.push(...piece);
    if (heard.length >= ramp.length) microphone.stop();
  }
  expect(heard.slice(0, ramp.length)).toEqual([...ramp]);
  expect(await microphone.ended).toEqual({ kind: 'stopped' });
});

test('a microphone that is unplugged ends with what the system said of it, and keeps its last sound', async () => {
  plugIn({ after: 'gone' });
  const microphone = await opened();
  let samples = 0;
  for await (const piece of microphone.sound) samples += piece.length;
  expect(samples).toBe(ramp.length);
  expect(await microphone.ended).toEqual({
    kind: 'lost',
    reason: 'arecord: pcm_read:2272: read error: No such device',
  });
});

test('a named device is opened by its name; an unknown one is a problem with the reason', async () => {
  plugIn();
  const microphone = await opened('bench');
  expect(microphone.name).toBe('bench');
  for await (const _piece of microphone.sound) microphone.stop();
  const unknown = await openMicrophone('attic; touch /tmp/x', ALSA);
  expect(unknown).toMatchObject({
    ok: false,
    problem: {
      code: 'microphone-unknown',
      exitCode: 3,
      message:
        'cannot record from "attic; touch /tmp/x": no such microphone answers (arecord: arecord: main:831: audio open error: No such file or directory)',
    },
  });
});

test('without any recorder the problem says what was tried', async () => {
  process.env.PATH = folder;
  expect(await openMicrophone(undefined, ALSA)).toMatchObject({
    ok: false,
    problem: {
      code: 'microphone-missing',
      message: 'cannot record: no microphone answers (arecord: not installed)',
      kept: 'nothing was recorded',
    },
  });
  expect(await microphones(ALSA)).toEqual([]);
});

test('the next source is tried where the first gives nothing', async () => {
  plugIn();
  const silent = {
    name: 'nowhere',
    devices: async () => [],
    open: () => openMicrophone('attic', ALSA),
  };
  const microphone = await openMicrophone('bench', [silent, ...ALSA]);
  expect(microphone.ok && microphone.value.name).toBe('bench');
  if (microphone.ok) for await (const _piece of microphone.value.sound) microphone.value.stop();
});

test('devices are listed with their source; the one that gives silence is left out', async () => {
  plugIn();
  expect(await microphones(ALSA)).toEqual([
    { name: 'bench', about: 'Bench microphone, Stand-in', source: 'arecord' },
  ]);
});

// Shapes of the lists as alsa-utils 1.2 and PulseAudio 16 print them; the second from memory.
test('the lists of both systems are read', () => {
  expect(
    alsaDevices(
      'null\n    Discard all samples\nhw:CARD=Mic,DEV=0\n    USB Mic, USB Audio\n    Direct hardware device\ndefault\n',
    ),
  ).toEqual([
    { name: 'hw:CARD=Mic,DEV=0', about: 'USB Mic, USB Audio, Direct hardware device' },
    { name: 'default' },
  ]);
  expect(
    pulseDevices(
      '0\talsa_output.pci.monitor\tmodule\ts16le 2ch 44100Hz\tIDLE\n1\talsa_input.usb\tmodule\ts16le 1ch 48000Hz\tSUSPENDED\n',
    ),
  ).toEqual([{ name: 'alsa_input.usb', about: 's16le 1ch 48000Hz' }]);
});
