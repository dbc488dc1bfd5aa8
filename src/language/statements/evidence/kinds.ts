/** The kinds of statement that evidence is weighed for, in the order of the columns of the tables. */
export const KINDS = ['decision', 'task', 'done', 'arrival', 'problem', 'promise'] as const;
export type Kind = (typeof KINDS)[number];
