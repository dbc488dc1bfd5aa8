/** Reads a calendar day as a person writes it. */

/** Whether `text` is a day that the calendar has, YYYY-MM-DD. */
export function isWrittenDay(text: string): boolean {
  return (
    /^\d{4}-\d{2}-\d{2}$/.test(text) &&
    !Number.isNaN(Date.parse(`${text}T00:00Z`)) &&
    new Date(`${text}T00:00Z`).toISOString().startsWith(text)
  );
}
