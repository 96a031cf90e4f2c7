export const effects = [28, 8, -3, 7, -1, 1, 18, 12] as const;
export const standardErrors = [15, 10, 16, 11, 9, 11, 10, 18] as const;
