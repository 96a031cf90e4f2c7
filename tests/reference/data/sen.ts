export const times = [1, 2, 3, 4, 10, 12, 18] as const;
export const values = [9, 15, 19, 20, 45, 55, 78] as const;
