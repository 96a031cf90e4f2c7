/** The colours of one invented golfer. */
export type Look = {
  readonly shirt: string;
  readonly shirtShade: string;
  readonly trousers: string;
  readonly trousersShade: string;
  readonly cap: string;
  readonly skin: string;
  readonly skinShade: string;
};

const trousersOf = {
  charcoal: { trousers: '#4a4f57', trousersShade: '#363a41' },
  stone: { trousers: '#b9ad97', trousersShade: '#968b76' },
  navy: { trousers: '#35415c', trousersShade: '#263046' },
} as const;
const skinOf = {
  light: { skin: '#e3b594', skinShade: '#c3916f' },
  tan: { skin: '#c48d63', skinShade: '#a06e49' },
  deep: { skin: '#7d5238', skinShade: '#613d28' },
} as const;
const shirtOf = {
  brick: { shirt: '#b5523f', shirtShade: '#8c3b2c' },
  teal: { shirt: '#2f8585', shirtShade: '#1f6464' },
  ochre: { shirt: '#cf9f43', shirtShade: '#a67b2b' },
  plum: { shirt: '#7a4b7d', shirtShade: '#5b355e' },
  sky: { shirt: '#6f9cc9', shirtShade: '#4f7aa5' },
  chalk: { shirt: '#e8e6df', shirtShade: '#c2bfb4' },
  moss: { shirt: '#6f8a4a', shirtShade: '#536a35' },
} as const;

export type ShirtName = keyof typeof shirtOf;
export type TrousersName = keyof typeof trousersOf;
export type SkinName = keyof typeof skinOf;

export const lookOf = (shirt: ShirtName, trousers: TrousersName, skin: SkinName, cap: string): Look => ({
  ...shirtOf[shirt],
  ...trousersOf[trousers],
  ...skinOf[skin],
  cap,
});
