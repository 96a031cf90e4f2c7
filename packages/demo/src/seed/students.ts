/** The students of the demo, by academy: who they are and how they came. */
export type StudentLine = {
  readonly key: string;
  readonly name: string;
  readonly hand: 'right' | 'left';
  readonly ageGroup: 'adult' | 'junior' | 'senior';
  readonly joinedDaysAgo: number;
  readonly standing: 'trial' | 'paid' | 'lapsed' | 'paused' | 'left';
  /** Of juniors: who consents. */
  readonly guardian?: { readonly name: string; readonly relation: string };
};

const line = (
  key: string,
  name: string,
  hand: 'right' | 'left',
  ageGroup: StudentLine['ageGroup'],
  joinedDaysAgo: number,
  standing: StudentLine['standing'],
  guardian?: StudentLine['guardian'],
): StudentLine => ({ key, name, hand, ageGroup, joinedDaysAgo, standing, ...(guardian ? { guardian } : {}) });

export const studentsOf: Readonly<Record<string, readonly StudentLine[]>> = {
  quillmere: [
    line('maren', 'Maren Oakhurst', 'right', 'adult', 3, 'trial'),
    line('piet', 'Piet Vandermoor', 'right', 'adult', 12, 'trial'),
    line('sunniva', 'Sunniva Brackley', 'right', 'adult', 5, 'trial'),
    line('ruben', 'Ruben Castellane', 'left', 'adult', 2, 'trial'),
    line('edda', 'Edda Whinfield', 'right', 'senior', 9, 'trial'),
    line('joss', 'Joss Tiverly', 'right', 'adult', 1, 'trial'),
    line('noor', 'Noor Halvorsen', 'right', 'junior', 6, 'trial', {
      name: 'Signe Halvorsen',
      relation: 'mother',
    }),
    line('cormac', 'Cormac Dunleaven', 'right', 'adult', 64, 'paid'),
    line('liv', 'Liv Stennholm', 'left', 'adult', 47, 'paid'),
    line('hugo', 'Hugo Pemberlane', 'right', 'senior', 88, 'paid'),
    line('anika', 'Anika Rosswell', 'right', 'adult', 33, 'lapsed'),
    line('dario', 'Dario Vinterby', 'right', 'adult', 52, 'left'),
  ],
  saltbarrow: [
    line('wren', 'Wren Calloway-Birk', 'right', 'adult', 4, 'trial'),
    line('otto', 'Otto Langmere', 'right', 'adult', 30, 'paid'),
    line('pia', 'Pia Drummarsh', 'left', 'adult', 2, 'trial'),
  ],
  tannhollow: [
    line('gesa', 'Gesa Thornquist', 'right', 'adult', 7, 'trial'),
    line('lars', 'Lars Ebbesund', 'right', 'adult', 40, 'paid'),
  ],
};
