declare module 'natural/lib/natural/stemmers/porter_stemmer.js' {
  const porter: { stem(word: string): string };
  export default porter;
}
