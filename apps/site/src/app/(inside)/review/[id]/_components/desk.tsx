'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { evidenceOf, withoutOrder } from '@ballfirst/diagnosis/evidence-of';
import type { FaultId } from '@ballfirst/library/types';
import { asksForTimes } from '@ballfirst/swing/asks-for-times';
import type { View } from '@ballfirst/swing/marks/marks';
import type { Place } from '@ballfirst/swing/marks/place';
import { useEffect, useMemo } from 'react';
import { heardAt } from '../_compare/heard-at.ts';
import type { ComparableHere } from '../_compare/use-comparable.ts';
import { lastMarked } from '../_marking/last-marked.ts';
import type { Marking } from '../_marking/marking.ts';
import { measuredPicture } from '../_marking/measured-picture.ts';
import { observationsOf } from '../_marking/observations-of.ts';
import { passOf } from '../_marking/pass-of.ts';
import { cameraMoves } from '../_marking/still-points.ts';
import { useFrameTimes } from '../_marking/use-frame-times.ts';
import { useMarking } from '../_marking/use-marking.ts';
import { useStage } from '../_stage/use-stage.ts';
import { useTrail } from '../_stage/use-trail.ts';
import { AlsoMark } from './also-mark.tsx';
import styles from './desk.module.css';
import type { DeskView } from './desk-view.ts';
import { GroundFirst } from './ground-first.tsx';
import { MarkHint } from './mark-hint.tsx';
import { MarkList } from './mark-list.tsx';
import { ObservationRow } from './observation-row.tsx';
import { PassNote } from './pass-note.tsx';
import { Readings } from './readings.tsx';
import { SaveLine } from './save-line.tsx';
import { SecondRoundPanel } from './second-round.tsx';
import { StageSide } from './stage-side.tsx';
import { StillNote } from './still-note.tsx';
import { TrailPanel } from './trail-panel.tsx';
import { useAsking } from './use-asking.ts';
import type { FilmAgainReason } from './use-claim.ts';
import type { Order } from './use-order.ts';
import { useSecondRound } from './use-second-round.ts';
import type { StudentSetHere } from './use-student-set.ts';
import type { WithReply } from './with-reply.ts';

type Clip = Reply<'readClip'>;
type Props = {
  submissionId: string;
  membershipId: string;
  clip: Clip & { media: NonNullable<Clip['media']>; picture: NonNullable<Clip['picture']> };
  swing: Pick<Reply<'readSubmission'>, 'club'> & { hand: 'right' | 'left' };
  stored: Marking;
  fault: FaultId;
  canWork: boolean;
  active: boolean;
  /** Goes to a clip of another view; null when there is none. */
  onOther: ((view: View) => void) | null;
  /** Whether the order of causes is held back, and the academy's own rates that it starts from. */
  order: Pick<Order, 'heldBack' | 'baseRates'>;
  onView: (view: DeskView) => void;
  onFilmAgain: (reason: FilmAgainReason) => void;
  onPutRight: () => void;
  comparable: ComparableHere;
  studentSet: StudentSetHere;
  units: 'metric' | 'imperial';
  withReply: WithReply;
  causes: (view: DeskView, onPlace: (place: Place) => void) => React.ReactNode;
};

/** Stage left with the film strip under it, marks and evidence right: all of it computed here as marks go down. */
export function Desk(props: Props) {
  const { submissionId, membershipId, clip, swing, stored, fault, canWork, active, onView } = props;
  const { picture, view, swingLength } = clip;
  const marking = useMarking({ submissionId, membershipId, stored, canWork });
  const stage = useStage(picture, picture.frames);
  const pass = useMemo(() => passOf(fault, view, swingLength), [fault, view, swingLength]);
  const { content, clipId } = marking;
  const { marks, observations, trail: traced } = content;
  const isTraced = (traced?.length ?? 0) > 0;
  const isTimed = useMemo(() => asksForTimes(marks, traced ?? []), [marks, traced]);
  const frameTimes = useFrameTimes(clip.media.rendition, isTimed);
  const measured = useMemo(() => measuredPicture(picture, frameTimes), [picture, frameTimes]);
  const { hand, club } = swing;
  const setting = useMemo(() => ({ view, swingLength, hand, club }), [view, swingLength, hand, club]);
  const { items } = props.comparable;
  const last = useMemo(
    () => lastMarked(items, { view, swingLength }, club),
    [items, view, swingLength, club],
  );
  const round = useSecondRound(marking, picture);
  const asking = useAsking({
    ...{ pass: round.places ?? pass.places, marking: round.marking, size: picture, stage, canWork },
    ...{ last: round.on ? null : last, timesS: measured.frameTimesS, heardAt: heardAt(clip) },
  });
  const trail = useTrail(marking, stage, canWork);
  const firstOn = round.frameOf(asking.target);
  const { goTo } = stage;
  useEffect(() => {
    if (firstOn !== null) goTo(firstOn);
  }, [firstOn, goTo]);
  const { set, need } = props.studentSet;
  useEffect(() => {
    if (isTraced) need();
  }, [isTraced, need]);
  const { heldBack, baseRates } = props.order;
  const evidence = useMemo(() => {
    const marked = {
      ...{ marks, observations, picture: measured, setting, set, clipId },
      ...(traced === undefined ? {} : { trail: traced }),
    };
    const whole = evidenceOf(fault, marked, baseRates);
    return heldBack ? withoutOrder(whole) : whole;
  }, [fault, marks, observations, traced, measured, setting, set, clipId, heldBack, baseRates]);
  const asked = useMemo(() => observationsOf(fault, view), [fault, view]);
  const now: DeskView = useMemo(
    () => ({
      ...{ clipId, marks, observations, camera: view, evidence, frame: stage.frame },
      begun: marks.length + observations.length > 0,
    }),
    [clipId, marks, evidence, stage.frame, observations, view],
  );
  useEffect(() => {
    if (active) onView(now);
  }, [active, now, onView]);

  // Another clip is looked at: what was changed here is kept and still saved.
  if (!active) return null;
  return (
    <div className={styles.desk}>
      <div className={styles.left}>
        <StageSide
          submissionId={submissionId}
          clip={clip}
          marking={round.marking}
          stage={stage}
          asking={asking}
          trail={trail}
          pass={pass.places}
          comparable={props.comparable}
          swing={swing}
          canWork={canWork}
          onPutRight={props.onPutRight}
          withReply={props.withReply}
        />
      </div>
      <div className={styles.right}>
        <div className={styles.column}>
          <div className="stack">
            <PassNote
              pass={pass}
              canWork={canWork}
              onOther={
                pass.betterFrom === null || props.onOther === null
                  ? null
                  : () => pass.betterFrom !== null && props.onOther?.(pass.betterFrom)
              }
              onFilmAgain={() => props.onFilmAgain('wrong-angle')}
            />
            <MarkList
              pass={round.places ?? pass.places}
              marking={round.marking}
              asking={asking}
              size={picture}
              frames={picture.frames}
              canWork={canWork}
            />
            <MarkHint asking={asking} frame={stage.frame} canWork={canWork} />
            <SecondRoundPanel round={round} placed={marks.length} canWork={canWork} />
            <StillNote
              moves={cameraMoves(marks, picture)}
              carried={asking.carried.length}
              canWork={canWork && asking.moment !== null}
              onConfirm={asking.confirmCarried}
              onFilmAgain={() => props.onFilmAgain('camera-moves')}
            />
            <AlsoMark view={view} canWork={canWork} onPlace={asking.choose} />
            <TrailPanel trail={trail} marks={marks} picture={measured} setting={setting} canWork={canWork} />
            <SaveLine marking={marking} />
          </div>
          <ObservationRow asked={asked} answers={observations} canWork={canWork} onAnswer={marking.observe} />
        </div>
        <div className={styles.column}>
          {props.causes(now, asking.choose)}
          <GroundFirst risk={evidence.fatRisk} units={props.units} />
          <Readings evidence={evidence} />
        </div>
      </div>
    </div>
  );
}
