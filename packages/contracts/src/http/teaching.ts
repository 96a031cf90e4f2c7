import { z } from 'zod';
import { operation } from '../operation.ts';
import { Instant } from '../words.ts';

const Share = z.object({ share: z.number(), low: z.number(), high: z.number() });

/** A fault or a cause, counted by swings and by students; a student counts once in a share. */
export const LatelyRow = z.object({
  id: z.string(),
  name: z.string(),
  swings: z.number().int(),
  students: z.number().int(),
  /** Of the students who have any, with the 95 % Wilson interval. */
  share: Share,
  /** Against the days of the thirty before the seven; only where both tell. */
  change: z.enum(['more', 'less', 'no-clear-change']).nullable(),
});
const Span = z.object({
  days: z.number().int(),
  swings: z.number().int(),
  /** Students whose swing told a fault, and students who got a cause. */
  faultStudents: z.number().int(),
  causeStudents: z.number().int(),
  faults: z.array(LatelyRow),
  causes: z.array(LatelyRow),
});
export const FaultsLately = z.object({
  week: Span,
  month: Span,
  /** The cause that most students share, and what teaches it; null before three students share one. */
  teachNext: z
    .object({
      cause: z.string(),
      name: z.string(),
      students: z.number().int(),
      of: z.number().int(),
      days: z.number().int(),
      say: z.string(),
      drills: z.array(z.object({ id: z.string(), name: z.string(), purpose: z.string() })),
      cautions: z.array(z.string()).min(1),
    })
    .nullable(),
});
export const readFaultsLately = operation({
  id: 'readFaultsLately',
  method: 'GET',
  path: '/api/faults',
  tag: 'library',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'Faults and causes by count over seven and thirty days, and what to teach next.',
  reply: FaultsLately,
});

/** A host name with a dot: no address of this machine or of a local network, no name and password in it. */
const webAddress = (text: string): boolean => {
  if (!URL.canParse(text)) return false;
  const { protocol, hostname, username, password, port } = new URL(text);
  const named = /^(?=.{4,253}$)([a-z0-9-]{1,63}\.)+[a-z][a-z0-9-]{1,62}$/.test(hostname);
  const local = /\.(local|localhost|internal|home|lan|arpa)$/.test(hostname);
  return protocol === 'https:' && username === '' && password === '' && port === '' && named && !local;
};

export const TeachingClip = z.object({
  cause: z.string(),
  causeName: z.string(),
  title: z.string(),
  url: z.string(),
  /** What it shows and says, for those who cannot see or hear it; empty for one kept before this was asked. */
  words: z.string(),
  by: z.string(),
  at: Instant,
});
/** As it goes with a reply: kept as it was then, whatever the academy keeps later. */
export const ReplyFilm = TeachingClip.pick({ cause: true, title: true, url: true, words: true });
const TeachingClips = z.object({ items: z.array(TeachingClip) });
const causeParam = z.object({
  cause: z
    .string()
    .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
    .max(60),
});

export const listTeachingClips = operation({
  id: 'listTeachingClips',
  method: 'GET',
  path: '/api/library/teaching-clips',
  tag: 'library',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'The academy’s teaching clips, one a cause.',
  reply: TeachingClips,
});
export const keepTeachingClip = operation({
  id: 'keepTeachingClip',
  method: 'PUT',
  path: '/api/library/teaching-clips/{cause}',
  tag: 'library',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'Keep the address of a film that explains a cause.',
  params: causeParam,
  body: z.object({
    title: z.string().trim().min(1, 'Give it a name.').max(120),
    url: z
      .string()
      .trim()
      .max(500)
      .refine(webAddress, 'Give a web address that begins with https:// and names a site.'),
    words: z
      .string()
      .trim()
      .min(1, 'Say in a sentence or two what it shows, for those who cannot see or hear it.')
      .max(600),
  }),
  reply: TeachingClips,
});
export const removeTeachingClip = operation({
  id: 'removeTeachingClip',
  method: 'DELETE',
  path: '/api/library/teaching-clips/{cause}',
  tag: 'library',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'Take the teaching clip of a cause away.',
  params: causeParam,
  reply: TeachingClips,
});
