'use client';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { Cautions } from '../../../../drill-card/cautions.tsx';
import { ProgressNote } from '../../../../drill-card/progress-note.tsx';
import { homeWords } from '../../../../words/home.ts';
import { progressWords } from '../../../../words/progress.ts';
import { NextThing } from './next-thing.tsx';
import { OnTheRange } from './on-the-range.tsx';
import { OwnMeans } from './own-means.tsx';
import { OwnReminders } from './own-reminders.tsx';
import { ProgrammeBlock } from './programme-block.tsx';
import { RepliesList } from './replies-list.tsx';
import { SwingsList } from './swings-list.tsx';
import { TrialStrip } from './trial-strip.tsx';
import { type HomeState, useHome } from './use-home.ts';
import { Weeks } from './weeks.tsx';

type Props = { first: HomeState; hand: PlayingHand; studentId: string };

/** A student's home: the one thing to do next, large; what lies behind it, below. */
export function Home({ first, hand, studentId }: Props) {
  const { home, renew } = useHome(first);
  const { programme } = home;
  return (
    <>
      <NextThing next={home.next} />
      <TrialStrip trial={home.trial} standing={home.standing} />
      {programme !== null && <ProgrammeBlock programme={programme} onLogged={renew} hand={hand} />}
      <OnTheRange />
      {home.progress !== null && <ProgressNote progress={home.progress} title={progressWords.title} />}
      <Cautions title={homeWords.cautionsTitle} cautions={home.cautions} />
      <RepliesList replies={home.replies} />
      <SwingsList swings={home.latest} />
      {(programme !== null || home.weeks.length > 0) && <Weeks weeks={home.weeks} />}
      <OwnMeans studentId={studentId} />
      <OwnReminders />
    </>
  );
}
