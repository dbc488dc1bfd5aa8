import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { decode, probe, SAMPLE_RATE, type SoundEnd } from '../../src/speech/decode.ts';
import { correlation, joined, risingTone } from '../kit/sound.ts';
import { type WaveForm, waveFile } from '../kit/wave-file.ts';

const fixtures = join(import.meta.dirname, 'fixtures');
const hasFfmpeg = spawnSync('ffmpeg', ['-version']).status === 0;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'decode-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function put(name: string, bytes: Uint8Array | string): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

async function decoded(path: string): Promise<{ samples: Float32Array; end: SoundEnd }> {
  const parts: Float32Array[] = [];
  const sound = decode(path);
  for (;;) {
    const next = await sound.next();
    if (next.done) return { samples: joined(parts), end: next.value };
    parts.push(next.value);
  }
}

function byFfmpeg(path: string): Float32Array {
  const args = ['-nostdin', '-v', 'fatal', '-i', `file:${path}`, '-map', '0:a:0', '-ac', '1', '-ar', '16000'];
  const bytes = execFileSync('ffmpeg', [...args, '-f', 'f32le', 'pipe:1'], { maxBuffer: 1e9 });
  return new Float32Array(Uint8Array.from(bytes).buffer);
}

describe('WAV', () => {
  const forms: [WaveForm, number, number][] = [
    ['u8', 16_000, 1],
    ['s16', 16_000, 1],
    ['s16', 8_000, 1],
    ['s16', 11_025, 2],
    ['s24', 44_100, 2],
    ['s32', 48_000, 2],
    ['f32', 48_000, 1],
    ['extensible', 48_000, 6],
    ['extensible', 96_000, 2],
  ];
  test.each(forms)(
    '%s at %d Hz with %d channels comes out as the same tone',
    async (form, sampleRate, channels) => {
      const path = put('tone.wav', waveFile(risingTone(3, sampleRate), { form, sampleRate, channels }));
      const { samples, end } = await decoded(path);
      expect(Math.abs(samples.length - 3 * SAMPLE_RATE)).toBeLessThanOrEqual(2);
      expect(correlation(samples, risingTone(3, SAMPLE_RATE))).toBeGreaterThan(0.999);
      expect(end.endsEarly).toBe(false);
    },
  );

  test('a file that stops before its stated end is heard as far as it goes, and says so', async () => {
    const whole = waveFile(risingTone(3, 16_000), { form: 's16', sampleRate: 16_000, channels: 1 });
    const path = put('cut.wav', whole.subarray(0, 44 + 32_000));
    expect(await probe(path)).toMatchObject({ ok: true, value: { endsEarly: true } });
    expect((await decoded(path)).end).toEqual({ durationSeconds: 1, endsEarly: true });
  });

  test('the recording time in a broadcast chunk is wall time without a zone', async () => {
    const plain = waveFile(risingTone(1, 16_000), { form: 's16', sampleRate: 16_000, channels: 1 });
    const broadcast = Buffer.alloc(8 + 602);
    broadcast.write('bext', 0, 'latin1');
    broadcast.writeUInt32LE(602, 4);
    broadcast.write('2026-03-0405:06:07', 8 + 320, 'latin1');
    const path = put('broadcast.wav', Buffer.concat([plain.subarray(0, 12), broadcast, plain.subarray(12)]));
    expect(await probe(path)).toMatchObject({
      ok: true,
      value: { format: 'WAV, PCM, 16 bit', createdAt: '2026-03-04T05:06:07' },
    });
  });
});

describe('compressed recordings', () => {
  const recordings: [name: string, format: string, createdAt: string | undefined][] = [
    ['memo-phone.wav', 'WAV, PCM, 8 bit', undefined],
    ['memo.opus', 'Ogg, Opus', undefined],
    ['memo-vorbis.ogg', 'Ogg, Vorbis', undefined],
    ['memo.webm', 'WebM, Opus', '2026-03-04T05:06:07Z'],
    ['memo.mp3', 'MP3', undefined],
    ['memo.flac', 'FLAC', undefined],
    ['memo.m4a', 'MP4, AAC', '2026-03-04T05:06:07Z'],
    ['memo.aac', 'ADTS, AAC', undefined],
    ['memo.mp4', 'MP4, AAC', '2026-03-04T05:06:07Z'],
    ['memo.mov', 'QuickTime, AAC', '2026-03-04T05:06:07Z'],
    ['memo.mkv', 'Matroska, AAC', '2026-03-04T05:06:07Z'],
  ];

  test.each(recordings)('%s is told to be %s, recorded at %s', async (name, format, createdAt) => {
    const facts = await probe(join(fixtures, name));
    expect(facts).toMatchObject({ ok: true, value: { format } });
    expect(facts.ok && facts.value.createdAt).toBe(createdAt);
  });

  test.each(recordings)('%s is told by its content, whatever its name ends in', async (name, format) => {
    const path = put('memo.bin', readFileSync(join(fixtures, name)));
    expect(await probe(path)).toMatchObject({ ok: true, value: { format } });
  });

  // Outside check: the ffmpeg program decodes the same files.
  test.skipIf(!hasFfmpeg).each(recordings)(
    '%s sounds as ffmpeg decodes it (skipped without ffmpeg)',
    async (name) => {
      const path = join(fixtures, name);
      const { samples } = await decoded(path);
      const expected = byFfmpeg(path);
      // The longest frame here is FLAC's, 1152 samples at 16 kHz; the container library drops a last one that is silent.
      const frame = 0.0721 * SAMPLE_RATE;
      expect(Math.abs(samples.length - expected.length)).toBeLessThanOrEqual(frame);
      expect(correlation(samples, expected, 2)).toBeGreaterThan(0.999);
    },
  );

  // Longer than one piece of packets: the seams must not be heard.
  const encoders: [string, string[]][] = [
    ['mp3', ['-c:a', 'libmp3lame', '-b:a', '32k']],
    ['m4a', ['-c:a', 'aac', '-b:a', '48k']],
    ['flac', ['-c:a', 'flac']],
    ['ogg', ['-c:a', 'libvorbis', '-q:a', '1']],
    ['opus', ['-c:a', 'libopus', '-b:a', '24k']],
  ];
  test.skipIf(!hasFfmpeg).each(encoders)(
    '70 s of %s have no seams where pieces meet (skipped without ffmpeg)',
    async (ending, options) => {
      const tone = joined(Array.from({ length: 7 }, () => risingTone(10, 24_000)));
      const source = put('tone.wav', waveFile(tone, { form: 's16', sampleRate: 24_000, channels: 1 }));
      const path = join(folder, `tone.${ending}`);
      execFileSync('ffmpeg', ['-nostdin', '-v', 'error', '-y', '-i', source, ...options, path]);
      const { samples } = await decoded(path);
      const expected = byFfmpeg(path);
      for (let at = 0; at + SAMPLE_RATE <= expected.length; at += SAMPLE_RATE) {
        const likeness = correlation(
          samples.subarray(at, at + SAMPLE_RATE),
          expected.subarray(at, at + SAMPLE_RATE),
          2,
        );
        // Opus comes out with a delay of half a sample, which costs 0.02 at the top of the tone.
        expect(likeness, `second ${at / SAMPLE_RATE}`).toBeGreaterThan(0.97);
      }
    },
  );

  test('a pause of the recorder stays in the times', async () => {
    const { Output, BufferTarget, MkvOutputFormat, EncodedAudioPacketSource, EncodedPacket } = await import(
      'mediabunny'
    );
    const output = new Output({ format: new MkvOutputFormat(), target: new BufferTarget() });
    const source = new EncodedAudioPacketSource('pcm-s16');
    output.addAudioTrack(source);
    await output.start();
    const second = new Uint8Array(
      Int16Array.from(risingTone(1, 16_000), (x) => Math.round(x * 32_767)).buffer,
    );
    const decoderConfig = { codec: 'pcm-s16', sampleRate: 16_000, numberOfChannels: 1 };
    await source.add(new EncodedPacket(second, 'key', 0, 1), { decoderConfig });
    await source.add(new EncodedPacket(second, 'key', 4, 1));
    await output.finalize();
    const path = put('paused.mkv', new Uint8Array(output.target.buffer ?? new ArrayBuffer()));
    const { samples } = await decoded(path);
    expect(samples.length).toBe(5 * SAMPLE_RATE);
    expect(samples.subarray(1.5 * SAMPLE_RATE, 3.5 * SAMPLE_RATE).every((sample) => sample === 0)).toBe(true);
    expect(correlation(samples.subarray(4 * SAMPLE_RATE), risingTone(1, SAMPLE_RATE))).toBeGreaterThan(0.999);
  });
});

describe('files that cannot be taken', () => {
  test('each fault has its own code, reason and advice', async () => {
    const m4a = readFileSync(join(fixtures, 'memo.m4a'));
    const header = waveFile(new Float32Array(), { form: 's16', sampleRate: 16_000, channels: 1 });
    const promised = Buffer.from(header);
    promised.writeUInt32LE(64_000, 40);
    const faults: [path: string, code: string, message: string][] = [
      [join(folder, 'nowhere.wav'), 'file-missing', 'cannot take nowhere.wav: there is no such file'],
      [fixtures, 'file-folder', 'cannot take fixtures: it is a folder'],
      [put('empty.mp3', ''), 'file-empty', 'cannot take empty.mp3: the file is empty'],
      [
        put('letter.wav', 'Dear friend,\nthe boat is nearly done.\n'),
        'file-text',
        'cannot take letter.wav: it is text, not sound',
      ],
      [
        put('playlist.m4a', '#EXTM3U\n#EXTINF:9,\nhttp://localhost/a.ts\n'),
        'file-text',
        'cannot take playlist.m4a: it is text, not sound',
      ],
      [put('word.wav', 'hello\n'), 'file-text', 'cannot take word.wav: it is text, not sound'],
      [
        put('archive.m4a', new Uint8Array([0x50, 0x4b, 3, 4, 20, 0, 0, 0, 8, 0, 0, 0, 0, 0, 0, 0])),
        'not-media',
        'cannot take archive.m4a: it is no sound or video file of a known kind',
      ],
      [
        put('cut.m4a', m4a.subarray(0, m4a.length >> 1)),
        'file-cut-off',
        'cannot take cut.m4a: the file ends before its index',
      ],
      [put('header.wav', header), 'sound-empty', 'cannot take header.wav: its sound track holds no samples'],
      [
        put('promised.wav', promised),
        'sound-empty',
        'cannot take promised.wav: its sound track holds no samples',
      ],
      [
        join(fixtures, 'without-sound.mp4'),
        'no-audio',
        'cannot take without-sound.mp4: the video has no sound track',
      ],
    ];
    for (const [path, code, message] of faults) {
      const facts = await probe(path);
      expect(facts, message).toMatchObject({ ok: false, problem: { code, message, exitCode: 3 } });
      await expect(decoded(path), message).rejects.toMatchObject({ code, message });
    }
  });

  test('a codec that only ffmpeg knows is named where ffmpeg is absent', async () => {
    const searched = process.env.PATH;
    process.env.PATH = folder;
    try {
      expect(await probe(join(fixtures, 'unknown-codec.mkv'))).toMatchObject({
        ok: false,
        problem: {
          code: 'codec-unknown',
          message: 'cannot take unknown-codec.mkv: its sound is AC-3, which cannot be decoded here',
          next: 'convert it to WAV, FLAC, MP3, M4A or Opus, or install ffmpeg, then take it again',
        },
      });
      expect(
        await probe(put('old.wma', Buffer.from('3026b2758e66cf11a6d900aa0062ce6c', 'hex'))),
      ).toMatchObject({
        ok: false,
        problem: { message: 'cannot take old.wma: its sound is Windows Media, which cannot be decoded here' },
      });
    } finally {
      process.env.PATH = searched;
    }
  });

  test.skipIf(!hasFfmpeg)(
    'the same codec is decoded where ffmpeg is there (skipped without ffmpeg)',
    async () => {
      const { samples } = await decoded(join(fixtures, 'unknown-codec.mkv'));
      expect(Math.abs(samples.length - SAMPLE_RATE)).toBeLessThan(2000);
    },
  );

  describe('AMR, bare and in a 3GP file as old phones write it', () => {
    // Frames of 20 ms at 12.2 kbit/s with bits at random: a noise. Source of the form: RFC 4867, section 5.
    let seed = 1;
    const anyByte = () => {
      seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
      return seed >>> 24;
    };
    const frames = Array.from({ length: 100 }, () => [0x3c, ...Array.from({ length: 31 }, anyByte)]).flat();
    const bare = () => put('phone.amr', Buffer.concat([Buffer.from('#!AMR\n'), Buffer.from(frames)]));
    const inside = () => {
      const path = join(folder, 'phone.3gp');
      execFileSync('ffmpeg', ['-nostdin', '-v', 'error', '-y', '-i', bare(), '-c', 'copy', path]);
      return path;
    };

    test.skipIf(!hasFfmpeg).each([bare, inside])(
      'is decoded by ffmpeg (skipped without it)',
      async (file) => {
        const path = file();
        // A bare file states no length: it is reckoned from the size.
        const facts = await probe(path);
        expect(facts.ok && facts.value.durationSeconds).toBeCloseTo(2, 0);
        const { samples, end } = await decoded(path);
        expect(Math.abs(samples.length - 2 * SAMPLE_RATE)).toBeLessThanOrEqual(0.02 * SAMPLE_RATE);
        expect(end.endsEarly).toBe(false);
      },
    );

    test.skipIf(!hasFfmpeg).each([bare, inside])('is named where ffmpeg is absent', async (file) => {
      const path = file();
      const searched = process.env.PATH;
      process.env.PATH = folder;
      try {
        expect(await probe(path)).toMatchObject({ ok: false, problem: { code: 'codec-unknown' } });
        expect(await probe(path)).toMatchObject({
          problem: { message: expect.stringContaining('its sound is AMR, which cannot be decoded here') },
        });
      } finally {
        process.env.PATH = searched;
      }
    });
  });

  test('damage in the middle of a recording costs that place only', async () => {
    const bytes = Buffer.from(readFileSync(join(fixtures, 'memo.mp3')));
    bytes.fill(0, 12_000, 14_000);
    const { samples } = await decoded(put('damaged.mp3', bytes));
    const whole = (await decoded(join(fixtures, 'memo.mp3'))).samples;
    expect(samples.length).toBeGreaterThan(whole.length * 0.8);
  });

  test('damaged Opus packets are passed over without a word on the screen', async () => {
    const bytes = Buffer.from(readFileSync(join(fixtures, 'memo.opus')));
    const page = bytes.indexOf('OggS', 5000);
    bytes.fill(0xff, page + 200, page + 500);
    const printed = vi.spyOn(console, 'error').mockImplementation(() => {});
    const { samples } = await decoded(put('damaged.opus', bytes));
    expect(printed).not.toHaveBeenCalled();
    printed.mockRestore();
    expect(samples.length).toBeGreaterThan(SAMPLE_RATE);
  });

  test('a recording is heard up to the place where the file breaks off', async () => {
    for (const name of ['memo.opus', 'memo.mp3', 'memo.flac', 'memo.mkv']) {
      const bytes = readFileSync(join(fixtures, name));
      const { end } = await decoded(put(`cut-${name}`, bytes.subarray(0, bytes.length * 0.7)));
      expect(end.endsEarly, name).toBe(true);
      expect(end.durationSeconds, name).toBeGreaterThan(3);
      expect(end.durationSeconds, name).toBeLessThan(8);
    }
  });

  test('a stop ends the decoding with the signal’s reason', async () => {
    const stop = new AbortController();
    const sound = decode(join(fixtures, 'memo.flac'), stop.signal);
    await sound.next();
    stop.abort(new Error('enough'));
    await expect(sound.next()).rejects.toThrow('enough');
  });
});
