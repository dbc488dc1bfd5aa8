/**
 * What every picture has around it: a title and a description for those who do not see it, and room to scroll where it
 * is wider than the page. Whatever a picture shows stands beside it as text too.
 */
import { type Html, html, type Part } from '../html.ts';

export interface PictureParts {
  /** Of its own on the page. */
  readonly id: string;
  readonly title: string;
  /** The same facts in sentences. */
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly body: Part;
  /** How to read it. */
  readonly caption: Part;
}

export function picture({ id, title, description, width, height, body, caption }: PictureParts): Html {
  return html`<figure class="picture">
<div class="wide" tabindex="0" role="group" aria-label="${title}"><svg viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="${id}-t ${id}-d">
<title id="${id}-t">${title}</title>
<desc id="${id}-d">${description}</desc>
${body}</svg></div>
<figcaption>${caption}</figcaption>
</figure>
`;
}

/** A coordinate as it is written: a tenth of a unit is finer than any screen. */
export const at = (value: number): string => String(Math.round(value * 10) / 10);

export interface Point {
  readonly x: number;
  readonly y: number;
}

export function line(from: Point, to: Point, look: string): Html {
  return html`<line class="${look}" x1="${at(from.x)}" y1="${at(from.y)}" x2="${at(to.x)}" y2="${at(to.y)}"/>\n`;
}

export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

export function rectangle({ x, y, width, height }: Box, look: string): Html {
  return html`<rect class="${look}" x="${at(x)}" y="${at(y)}" width="${at(Math.max(width, 0))}" height="${at(Math.max(height, 0))}"/>\n`;
}

export function label({ x, y }: Point, words: Part, look = ''): Html {
  return html`<text${look !== '' && html` class="${look}"`} x="${at(x)}" y="${at(y)}">${words}</text>\n`;
}

/** Slanted strokes over a box: what is on the wrong side of a limit, or taken off. */
export function hatching({ x, y, width, height }: Box, step = 9): Html {
  const strokes: string[] = [];
  for (let start = -height; start < width; start += step) {
    // From the lower edge up to the right, cut off at the edges of the box.
    const low = Math.max(start, 0);
    const high = Math.min(start + height, width);
    if (high <= low) continue;
    strokes.push(
      `M${at(x + low)} ${at(y + height - (low - start))}L${at(x + high)} ${at(y + height - (high - start))}`,
    );
  }
  return html`<path class="hatch" d="${strokes.join('')}"/>\n`;
}

/** The steps of a scale: 1, 2 or 5 times a power of ten, so that about `wanted` of them fill the span. */
export function niceStep(span: number, wanted: number): number {
  if (!(span > 0)) return 1;
  const raw = span / wanted;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].find((one) => one * power >= raw * 0.999) ?? 10;
  return Number((step * power).toPrecision(3));
}

/** The steps that lie in a span. */
export function ticksOf(least: number, greatest: number, wanted = 5): readonly number[] {
  const step = niceStep(greatest - least, wanted);
  const ticks: number[] = [];
  for (let count = Math.ceil(least / step); count * step <= greatest + step * 1e-9; count++)
    ticks.push(Number((count * step).toPrecision(12)));
  return ticks;
}
