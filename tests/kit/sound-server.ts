/**
 * A sound server without a sound card, for tests: PulseAudio with a mouth that is played into, a microphone that hears the
 * mouth, and a room whose sound can be kept. It has a home of its own and touches no other server.
 */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { waveFile } from '../../src/speech/voice/wave-file.ts';

/** Why no server can be started here; undefined where one can. */
export const NO_SOUND_SERVER: string | undefined = ['pulseaudio', 'pactl', 'paplay', 'parecord'].every(
  (program) => spawnSync(program, ['--version']).status === 0,
)
  ? undefined
  : 'PulseAudio is not installed: no sound card to stand in for';

/** Samples a second of everything here. */
const RATE = 16_000;

export interface SoundServer {
  /** What a program has to find around it so as to use this server. */
  readonly env: Readonly<Record<string, string>>;
  /** Plays samples from -1 to 1 into the mouth; resolves when they have sounded. */
  play(sound: Float32Array): Promise<void>;
  /** Keeps what sounds in the room until the given work is done, and gives it back as samples from -1 to 1. */
  heardInRoom(work: () => Promise<void>): Promise<Float32Array>;
  /** From now on the microphone also hears the room, as it does at a bench. */
  openRoom(): void;
  close(): void;
}

export async function startSoundServer(): Promise<SoundServer> {
  const home = mkdtempSync(join(tmpdir(), 'hearwright-sound-'));
  const env = { HOME: home, XDG_RUNTIME_DIR: home, PULSE_RUNTIME_PATH: home };
  const around = { ...process.env, ...env };
  const modules = [
    'module-native-protocol-unix',
    `module-null-sink sink_name=room rate=${RATE} channels=1`,
    `module-null-sink sink_name=mouth rate=${RATE} channels=1`,
    'module-remap-source master=mouth.monitor source_name=bench',
  ];
  const words = ['-n', '--daemonize=no', '--exit-idle-time=-1', '--log-level=error'];
  const server = spawn('pulseaudio', [...words, ...modules.flatMap((one) => ['-L', one])], {
    env: around,
    stdio: 'ignore',
  });
  const pactl = (...more: readonly string[]) => spawnSync('pactl', [...more], { env: around });
  const end = performance.now() + 10_000;
  while (!String(pactl('list', 'short', 'sources').stdout).includes('bench')) {
    if (performance.now() > end) throw new Error('the sound server does not answer');
    await pause(50);
  }
  // Else the newest is taken, which hears nothing of the mouth.
  pactl('set-default-source', 'bench');
  pactl('set-default-sink', 'room');
  return {
    env,
    async play(sound) {
      const file = join(home, 'played.wav');
      writeFileSync(file, waveFile(sound, RATE));
      await ended(spawn('paplay', ['--device=mouth', file], { env: around, stdio: 'ignore' }));
    },
    async heardInRoom(work) {
      const file = join(home, 'room.raw');
      const format = ['--raw', '--format=s16le', `--rate=${RATE}`, '--channels=1', '--latency-msec=50'];
      const keeper = spawn('parecord', [...format, '--device=room.monitor', file], { env: around });
      await pause(500);
      await work();
      await pause(500);
      keeper.kill('SIGTERM');
      await ended(keeper);
      const bytes = readFileSync(file);
      return Float32Array.from({ length: bytes.length >> 1 }, (_, at) => bytes.readInt16LE(2 * at) / 32_768);
    },
    openRoom: () =>
      void pactl('load-module', 'module-loopback', 'source=room.monitor', 'sink=mouth', 'latency_msec=30'),
    close() {
      server.kill('SIGKILL');
      rmSync(home, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const ended = (child: ChildProcess) => new Promise<void>((resolve) => child.on('close', () => resolve()));
