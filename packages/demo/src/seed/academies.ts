/** Three invented academies. Every name, place and address here is made up; `.example` addresses reach nobody. */
export type StaffLine = { readonly role: 'coach' | 'manager'; readonly name: string; readonly email: string };
export type AcademyLine = {
  readonly slug: string;
  readonly name: string;
  readonly zone: string;
  readonly workingHours: {
    readonly week: Readonly<Record<string, readonly (readonly [string, string])[]>>;
    readonly holidays: readonly string[];
  };
  readonly promiseHours: number;
  readonly trialDays: number;
  readonly trialStarts: 'joining' | 'first-swing';
  readonly priceWords: string;
  readonly consentAge: number;
  readonly safeguardContact: string;
  readonly openedDaysAgo: number;
  readonly staff: readonly StaffLine[];
};

const weekdays = (
  hours: readonly (readonly [string, string])[],
  saturday: readonly (readonly [string, string])[],
) => ({
  mon: hours,
  tue: hours,
  wed: hours,
  thu: hours,
  fri: hours,
  sat: saturday,
  sun: [],
});

export const academies: readonly AcademyLine[] = [
  {
    slug: 'quillmere',
    name: 'Quillmere Golf School',
    zone: 'Europe/London',
    workingHours: {
      week: weekdays(
        [
          ['08:00', '12:30'],
          ['13:30', '18:00'],
        ],
        [['09:00', '13:00']],
      ),
      holidays: ['2026-12-25', '2026-12-28', '2027-01-01'],
    },
    promiseHours: 18,
    trialDays: 14,
    trialStarts: 'joining',
    priceWords: '36 pounds a month, four replies, stop any month',
    consentAge: 16,
    safeguardContact: 'care@quillmere.example',
    openedDaysAgo: 400,
    staff: [
      { role: 'manager', name: 'Odile Marrowby', email: 'odile@quillmere.example' },
      { role: 'coach', name: 'Tamsin Harrowgate', email: 'tamsin@quillmere.example' },
      { role: 'coach', name: 'Bertil Ostrander', email: 'bertil@quillmere.example' },
      { role: 'coach', name: 'Imre Falkenby', email: 'imre@quillmere.example' },
    ],
  },
  {
    slug: 'saltbarrow',
    name: 'Saltbarrow Practice Ground',
    zone: 'America/New_York',
    workingHours: { week: weekdays([['09:00', '17:00']], []), holidays: ['2026-11-26', '2026-12-25'] },
    promiseHours: 16,
    trialDays: 10,
    trialStarts: 'first-swing',
    priceWords: '45 dollars a month, replies as they come',
    consentAge: 13,
    safeguardContact: 'care@saltbarrow.example',
    openedDaysAgo: 130,
    staff: [
      { role: 'manager', name: 'Jolanta Pierwood', email: 'jolanta@saltbarrow.example' },
      { role: 'coach', name: 'Anselm Quarrier', email: 'anselm@saltbarrow.example' },
    ],
  },
  {
    slug: 'tannhollow',
    name: 'Tannhollow Lessons',
    zone: 'Europe/Berlin',
    workingHours: { week: weekdays([['10:00', '18:00']], []), holidays: ['2026-12-25', '2027-01-01'] },
    promiseHours: 12,
    trialDays: 14,
    trialStarts: 'joining',
    priceWords: '29 euros a month, two replies',
    consentAge: 16,
    safeguardContact: 'care@tannhollow.example',
    openedDaysAgo: 9,
    staff: [{ role: 'manager', name: 'Wiebke Sandlund', email: 'wiebke@tannhollow.example' }],
  },
];

/** The same for every demo person: the demo listens on this machine only. */
export const demoPassword = 'brush-past-the-line';
