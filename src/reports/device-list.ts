/** Recorders and their clocks for the terminal. */
import type { DeviceView, MemoSummary } from '../model/views.ts';
import { counted } from './source-text.ts';
import { textTable } from './text-table.ts';

/** A recorder that files of memos name, and how many of them. */
export interface SeenDevice {
  readonly device: string;
  readonly memos: number;
}

export function seenDevices(memos: readonly Pick<MemoSummary, 'source'>[]): readonly SeenDevice[] {
  const counts = new Map<string, number>();
  for (const { source } of memos)
    if (source.device) counts.set(source.device, (counts.get(source.device) ?? 0) + 1);
  return [...counts].map(([device, number]) => ({ device, memos: number }));
}

/** "+1:00:12" */
export function offsetText(seconds: number): string {
  const two = (value: number) => String(value).padStart(2, '0');
  const size = Math.abs(seconds);
  const clock = `${Math.floor(size / 3600)}:${two(Math.floor(size / 60) % 60)}:${two(size % 60)}`;
  return `${seconds < 0 ? '-' : '+'}${clock}`;
}

const COUNTS = { utc: 'counts in UTC', local: 'counts in local time' } as const;

export function deviceTable(devices: readonly DeviceView[], seen: readonly SeenDevice[]): string {
  const told =
    devices.length === 0
      ? 'No clock has been told of.\n'
      : textTable(
          devices.map(({ name, offsetSeconds, counts, files = [] }) => [
            name,
            offsetSeconds === 0 ? 'its time holds' : `${offsetText(offsetSeconds)} to its time`,
            counts ? COUNTS[counts] : '',
            files.join(' '),
          ]),
        );
  if (seen.length === 0) return told;
  return `${told}\nNamed in files:\n${textTable(seen.map(({ device, memos }) => [device, counted(memos, 'memo')]))}`;
}
