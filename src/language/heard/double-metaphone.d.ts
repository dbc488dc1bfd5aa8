declare module 'natural/lib/natural/phonetics/double_metaphone.js' {
  export default class DoubleMetaphone {
    /** Primary and secondary key of a word. */
    process(token: string, maxLength?: number): [string, string];
  }
}
