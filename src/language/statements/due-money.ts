/** What falls due and is paid, as a part of a phrase. */
export const DUE_MONEY =
  '(?: fee | fees | rent | invoice | bill | bills | payment | payments | deposit | instalment | installment | insurance | licence | license | tax | mot | premium | fine | balance | wages )';
