/** The hours in which a student is not written to, on their wall clock; null: none. */
export const quietOf = (row: {
  readonly quietFrom: string | null;
  readonly quietTo: string | null;
}): { from: string; to: string } | null =>
  row.quietFrom === null || row.quietTo === null ? null : { from: row.quietFrom, to: row.quietTo };
