/** Plain words in which what is named by its number or its id leads to where it stands. */
import { html, type Part } from './html.ts';
import type { Words } from './outline-html.ts';
import type { Links } from './site-map.ts';

/** "memo 14", and the id of a task or a clash in square or round brackets: "[m3.t2]", "(m6.c1)". */
const MENTION = /\bmemo (\d+)\b|(?<=[[(])(?:m\d+\.[a-z]\d+|s\d+(?:\.[a-z]\d+)?)(?=[\])])/gu;

/** Makes links of mentions; the words stay as they are, and what leads nowhere is no link. */
export function mentionsLinked(links: Pick<Links, 'memo' | 'task' | 'finding'>): Words {
  return (text) => {
    const parts: Part[] = [];
    let from = 0;
    for (const found of text.matchAll(MENTION)) {
      const [words, memo] = found;
      const to =
        memo === undefined ? (links.task(words) ?? links.finding(words)) : links.memo({ memoId: `m${memo}` });
      if (to === undefined) continue;
      parts.push(text.slice(from, found.index), html`<a href="${to}">${words}</a>`);
      from = found.index + words.length;
    }
    return [...parts, text.slice(from)];
  };
}
