type Swing = { readonly id: string; readonly sentAt: Date; readonly balls: number; readonly solid: number };

/** Fewer balls say too little of a swing. Common practice, no source. */
const leastBalls = 5;

/** The swing whose set had the most solid balls for its number; of equals the latest. Null: none was counted over five balls. */
export const bestOf = (swings: readonly Swing[]): string | null => {
  const share = ({ solid, balls }: Swing) => solid / balls;
  const [best] = swings
    .filter(({ balls, solid }) => balls >= leastBalls && solid > 0)
    .toSorted((a, b) => share(b) - share(a) || b.sentAt.getTime() - a.sentAt.getTime());
  return best?.id ?? null;
};
