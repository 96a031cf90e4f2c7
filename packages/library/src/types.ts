/**
 * The typed content of the library: faults, causes, signs, bands, drills, phrases. Data only; `check.ts` verifies it.
 * Ids are words. Every figure carries a `source`: a citation, 'common practice, no source' or 'from memory'.
 */
export const faults = [
  'fat',
  'thin',
  'topped',
  'slice',
  'hook',
  'push',
  'pull',
  'shank',
  'heel',
  'toe',
  'sky',
] as const;
/** What goes wrong at the ball: the symptom. */
export type FaultId = (typeof faults)[number];

/** Balls that never repeat: no outcome of one ball, but of a set. */
export const scatters = ['low-point-scatter', 'face-scatter'] as const;
export type ScatterId = (typeof scatters)[number];

/** What a cause may bring about. */
export type SymptomId = FaultId | ScatterId;

/** Where a camera may stand. */
export type CameraView = 'face-on' | 'down-the-line';

/** What a ten-ball tally counts. */
export const outcomes = ['solid', 'fat', 'thin', 'topped', 'heel', 'toe', 'shank', 'sky'] as const;
export type Outcome = (typeof outcomes)[number];

export type CauseGroup = 'equipment' | 'set-up' | 'pivot' | 'arc' | 'face' | 'environment';
/** Set-up ticks do not count as a priority: a reply is one movement and up to three ticks. */
export type SetUpTick = 'grip' | 'handle' | 'hips' | 'ball';

/**
 * A sign of a cause. A measured sign reads measurement `key` past `edge` in `direction` (same unit as the measurement),
 * with between-player SD `sd`; an observed sign is tapped yes/no. `shares` names the marks that several signs have in common.
 * A measured sign without `edge` is read past the band's own edge for that club and length (low for below, high for above,
 * the nearer of both for outside). `ratioAtMost`: it only supports, and never speaks more than so many times for its cause.
 */
export type Sign = {
  readonly kind: 'measured' | 'observed';
  readonly key: string;
  readonly view: CameraView | 'either';
  readonly sensitivity: number;
  readonly specificity: number;
  readonly edge?: number;
  readonly direction?: 'above' | 'below' | 'outside';
  readonly sd?: number;
  readonly shares?: string;
  readonly ratioAtMost?: number;
  readonly source: string;
};

export type Cause = {
  readonly id: string;
  readonly name: string;
  readonly group: CauseGroup;
  readonly tick?: SetUpTick;
  /** Weight 3, 2 or 1 by what it may bring about. */
  readonly brings: Readonly<Partial<Record<SymptomId, 1 | 2 | 3>>>;
  readonly baseRate: number;
  readonly signs: readonly Sign[];
  /** Views that cannot show it, with a sentence for the coach: what to film or ask instead. */
  readonly unseen: Readonly<Partial<Record<CameraView, string>>>;
  /** Downstream causes it may bring, with probability. */
  readonly leadsTo: Readonly<Record<string, number>>;
  readonly trainability: number;
  /** Plain sentence for a student; `{lead}` and `{trail}` become left or right. */
  readonly forStudent: string;
  /** In order of preference. */
  readonly drills: readonly string[];
  /** What else to arrange, where a drill alone cannot mend it: a sentence for a student. */
  readonly check?: string;
  readonly source: string;
};

export type Observation = {
  readonly key: string;
  readonly question: string;
  readonly view: CameraView | 'either';
};

export type Sex = 'woman' | 'man';
export type Level = 'beginner' | 'club' | 'skilled';

/** A band by measurement, club, swing length and view, the same for either hand; the first match wins. */
export type BandRow = {
  readonly key: string;
  readonly clubs: readonly string[] | 'any';
  readonly lengths: readonly string[] | 'any';
  /** Only in these views, for these players; absent: all. */
  readonly views?: readonly CameraView[];
  readonly sexes?: readonly Sex[];
  readonly levels?: readonly Level[];
  readonly low: number | null;
  readonly high: number | null;
  readonly label: 'verified' | 'second-hand' | 'derived' | 'common practice' | 'from memory';
  readonly source: string;
};

export const places = ['mat', 'grass', 'home'] as const;
export type Place = (typeof places)[number];
export type Exaggeration = 'mild' | 'firm' | 'strong';

/**
 * One object of a station, drawn to scale: millimetres, origin at the ball, x towards the target, y away from the player
 * (feet have negative y). `xMm`, `yMm` are the middle of the object; at 0 deg its length lies along x, a positive turn
 * leads from x towards y.
 */
export type StationObject = {
  readonly what:
    | 'ball'
    | 'soft-ball'
    | 'towel'
    | 'line'
    | 'stick'
    | 'tape'
    | 'tee'
    | 'cushion'
    | 'lead-foot'
    | 'trail-foot';
  readonly xMm: number;
  readonly yMm: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly rotationDeg: number;
  /** How high it stands; absent: it lies flat. */
  readonly heightMm?: number;
  readonly label: string;
};
export type Station = {
  readonly place: Place;
  readonly needs: readonly string[];
  readonly objects: readonly StationObject[];
  /** How to set it up, in grip lengths and ball diameters with cm behind. */
  readonly steps: readonly string[];
  /** The highest rung that is sound at this place (firm mats, low ceilings); absent: the whole ladder. */
  readonly lastRung?: RungId;
  /** Fewer balls than the drill's own limit at this place. */
  readonly ballsAtMost?: number;
};

export const rungs = ['rehearsal', 'brush', 'hip-high', 'three-quarter', 'full', 'transfer'] as const;
export type RungId = (typeof rungs)[number];

/**
 * One step of a drill's ladder. `clean` says what counts; `filmed`: only filmed entries count for the gate; `allOf`: the
 * rung passes when so many in one entry are all clean, instead of by the sequential rule.
 */
export type Rung = {
  readonly id: RungId;
  readonly ball: boolean;
  readonly balls: number;
  readonly speedPercent: number;
  readonly clean: string;
  readonly filmed: boolean;
  readonly allOf?: number;
};

/** Body parts that rule a drill out while they hurt. */
export const pains = [
  'low-back-pain',
  'wrist-pain',
  'elbow-pain',
  'hip-pain',
  'knee-pain',
  'shoulder-pain',
  'neck-pain',
] as const;
export type PainId = (typeof pains)[number];

export type AgeGroup = 'adult' | 'junior' | 'senior';

/**
 * How far a drill overdoes the move; `setting` is the figure, `notFor` the players who stay milder. `obstacle`: what the
 * club has to pass over, so far behind the ball and so high.
 */
export type ExaggerationLevel = {
  readonly level: Exaggeration;
  readonly how: string;
  readonly setting: string;
  readonly notFor?: readonly AgeGroup[];
  readonly obstacle?: { readonly behindMm: number; readonly heightMm: number };
};

export type Drill = {
  readonly id: string;
  readonly name: string;
  readonly version: number;
  readonly purpose: string;
  readonly causes: readonly string[];
  readonly stations: readonly Station[];
  readonly steps: readonly string[];
  readonly feel: string;
  readonly ladder: readonly Rung[];
  /** The opposite miss a working drill brings: progress, not a new fault. */
  readonly overCorrection: string;
  readonly exaggerations: readonly ExaggerationLevel[];
  /** How much and how often, as a sentence. */
  readonly dose: string;
  readonly minutes: number;
  readonly ballsAtMost: number;
  /** Never empty: a drill without cautions is refused by the checker. */
  readonly cautions: readonly string[];
  readonly notWith: readonly PainId[];
  readonly source: string;
};
