/** Names of formats and codecs, for messages: a person converts a file more easily when told what it is. */

/** Containers that the library does not read, told by their first bytes. */
const SIGNATURES: readonly (readonly [name: string, offset: number, bytes: string])[] = [
  ['AVI', 8, 'AVI '],
  ['AIFF', 8, 'AIFF'],
  ['AIFF', 8, 'AIFC'],
  ['Core Audio', 0, 'caff'],
  ['AMR', 0, '#!AMR'],
  ['Windows Media', 0, '\x30\x26\xb2\x75\x8e\x66\xcf\x11'],
  ['MPEG program stream', 0, '\x00\x00\x01\xba'],
  ['Flash video', 0, 'FLV'],
  ['Sun audio', 0, '.snd'],
  ['Wave64', 0, 'riff\x2e\x91\xcf\x11'],
  ['Monkey’s Audio', 0, 'MAC '],
  ['WavPack', 0, 'wvpk'],
  ['3GPP', 4, 'ftyp3g'],
];

export function formatBySignature(head: Buffer): string | undefined {
  return SIGNATURES.find(([, offset, bytes]) => {
    const mark = Buffer.from(bytes, 'latin1');
    return head.subarray(offset, offset + mark.length).equals(mark);
  })?.[0];
}

const CODECS: Record<string, string> = {
  aac: 'AAC',
  opus: 'Opus',
  mp3: 'MP3',
  vorbis: 'Vorbis',
  flac: 'FLAC',
  ac3: 'AC-3',
  eac3: 'E-AC-3',
  dts: 'DTS',
  alac: 'Apple Lossless',
  ulaw: 'PCM, mu-law',
  alaw: 'PCM, A-law',
  samr: 'AMR',
  sawb: 'AMR wideband',
};

/** "AAC", "PCM, 24 bit"; an unknown codec keeps its identifier, cut to plain letters. */
export function codecName(codec: string): string {
  const pcm = /^pcm-([suf])(\d+)/.exec(codec);
  if (pcm) return `PCM, ${pcm[2]} bit${pcm[1] === 'f' ? ' float' : ''}`;
  return CODECS[codec] ?? (codec.replace(/[^\w.-]/g, '').slice(0, 24) || 'of an unnamed codec');
}

const CONTAINERS: Record<string, string> = {
  WAVE: 'WAV',
  'QuickTime File Format': 'QuickTime',
  'MPEG Transport Stream': 'MPEG transport stream',
};

export function containerName(name: string): string {
  return CONTAINERS[name] ?? name;
}
