/** How long lists are divided into pages. */

/** So many entries still make a page that is read with pleasure; more are divided. Common practice, no source. */
export const MOST_ON_A_PAGE = 300;

/** The year of an instant or a date, in its own zone. */
export const yearOf = (instant: string) => instant.slice(0, 4);
