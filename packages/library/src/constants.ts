/** Lengths and clubs the trade works with. Every figure names its source. */
export const ballDiameterMm = 42.67; // smallest diameter allowed, 1.680 in: Equipment Rules of golf, part 4
/** A grip is 254 to 267 mm long; we build stations with this: common practice, no source. */
export const gripLengthMm = 260;

/** Radius of the clubhead's circle with an iron and the tilt of its plane: common practice, measured where marks allow. */
export const ironArc = { radiusMm: 1300, planeDeg: 62 } as const;

/** No rigid object nearer than this to the path of the clubhead: common practice, no source. */
export const rigidClearanceMm = 300;
/** A soft towel's near edge is at least this far behind the ball: common practice, no source. */
export const towelClearanceMm = 100;
/** How high a soft obstacle stands: a towel in one layer, a practice ball. */
export const obstacleHeightsMm: Readonly<Record<string, number>> = { towel: 8, 'soft-ball': ballDiameterMm };

/** A session: no more balls than this in all: common practice, no source. */
export const sessionBallsAtMost = 90;

/** Club lengths in mm of a usual men's steel set: from memory; no standard exists, an academy may edit them. */
export const clubLengthsMm = {
  driver: 1150,
  fairway: 1092,
  hybrid: 1016,
  '5-iron': 965,
  '6-iron': 953,
  '7-iron': 940,
  '8-iron': 927,
  '9-iron': 914,
  wedge: 905,
} as const;

/** What a station may ask for, by id, in a student's words. */
export const equipment = {
  club: 'a mid-iron',
  balls: 'balls',
  'soft-balls': 'three soft practice balls (foam or plastic)',
  towel: 'a hand towel',
  tape: 'masking tape',
  rug: 'a rug or an old piece of carpet',
  mirror: 'a tall mirror or your phone on a stand',
  cushion: 'a cushion, a headcover or a rolled towel',
  bag: 'your golf bag or a soft, padded chair',
  stick: 'two sticks or two spare clubs, laid flat',
  tees: 'a few tees',
  pen: 'face tape or a dry-wipe pen',
  phone: 'your phone, to film or to count',
  slope: 'a gentle slope, no steeper than a wheelchair ramp',
} as const;
export type EquipmentId = keyof typeof equipment;
/** What every student is taken to have when nothing else is known. */
export const usualEquipment: readonly EquipmentId[] = [
  'club',
  'balls',
  'towel',
  'tape',
  'rug',
  'mirror',
  'cushion',
  'bag',
  'stick',
  'tees',
  'phone',
];
