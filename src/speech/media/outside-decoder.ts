/** The system's ffmpeg, where there is one, for formats that nothing bundled reads. */
import { execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { promisify } from 'node:util';
import { floatsFrom } from '../float-stream.ts';
import type { MediaFacts } from '../transcript.ts';
import { timeFromTag } from './container-outline.ts';
import { SAMPLE_RATE } from './steady-sound.ts';

const run = promisify(execFile);

/** A file that is really a play list must not make the program fetch anything else. */
const LOCAL_ONLY = ['-protocol_whitelist', 'file,pipe'];

/** What ffprobe says of the file's first sound track; undefined without the program, or when it cannot say. */
export async function outsideFacts(path: string): Promise<MediaFacts | undefined> {
  const show = 'format=duration,format_long_name:format_tags=creation_time:stream=codec_name,codec_type';
  const args = ['-v', 'error', ...LOCAL_ONLY, '-show_entries', show, '-of', 'json', '-i', `file:${path}`];
  try {
    const { stdout } = await run('ffprobe', args, {
      timeout: 60_000,
      maxBuffer: 4_000_000,
      windowsHide: true,
    });
    return factsFrom(JSON.parse(stdout));
  } catch {
    return undefined;
  }
}

interface ProbeAnswer {
  readonly format?: {
    readonly duration?: string;
    readonly format_long_name?: string;
    readonly tags?: { readonly creation_time?: string };
  };
  readonly streams?: readonly { readonly codec_name?: string; readonly codec_type?: string }[];
}

function factsFrom(answer: ProbeAnswer): MediaFacts | undefined {
  const sound = answer.streams?.find((stream) => stream.codec_type === 'audio');
  if (!sound?.codec_name) return undefined;
  const createdAt = timeFromTag(answer.format?.tags?.creation_time ?? '');
  return {
    format: `${answer.format?.format_long_name ?? 'unnamed'}, ${sound.codec_name}`,
    durationSeconds: Number(answer.format?.duration ?? 0) || 0,
    ...(createdAt ? { createdAt } : {}),
  };
}

/** Streams the first sound track as 16 kHz mono. Throws when the program fails; stops it when no longer read. */
export async function* outsideSound(path: string): AsyncGenerator<Float32Array> {
  const rate = String(SAMPLE_RATE);
  const args = ['-nostdin', '-v', 'error', ...LOCAL_ONLY, '-i', `file:${path}`, '-map', '0:a:0', '-vn'];
  const form = ['-ac', '1', '-ar', rate, '-f', 'f32le', 'pipe:1'];
  const child = spawn('ffmpeg', [...args, ...form], { stdio: ['ignore', 'pipe', 'pipe'], windowsHide: true });
  const closed = once(child, 'close');
  let complaint = '';
  child.stderr.on('data', (bytes: Buffer) => {
    complaint = (complaint + bytes.toString('utf8')).slice(-2000);
  });
  try {
    yield* floatsFrom(child.stdout);
    const [exitCode] = await closed;
    if (exitCode !== 0) throw new Error(`ffmpeg ended with ${exitCode}: ${complaint.trim()}`);
  } finally {
    child.kill('SIGKILL');
    closed.catch(() => {});
  }
}
