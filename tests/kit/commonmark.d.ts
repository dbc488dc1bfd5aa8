/** The part of commonmark 0.31 that the tests use; the package brings no types. */
declare module 'commonmark' {
  export interface Node {
    readonly type: string;
    readonly level?: number;
    readonly literal: string | null;
    walker(): { next(): { readonly entering: boolean; readonly node: Node } | null };
  }
  export class Parser {
    parse(markdown: string): Node;
  }
}
