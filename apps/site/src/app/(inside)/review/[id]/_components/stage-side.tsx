'use client';
import type { Reply } from '@ballfirst/contracts/client';
import type { Place } from '@ballfirst/swing/marks/place';
import { useEffect, useMemo, useRef, useState } from 'react';
import { useClip } from '../../../../../frames/use-clip.ts';
import { useKept } from '../../../../../shell/use-kept.ts';
import { hintWords } from '../../../../../words/hints.ts';
import { pointNames, positionNames } from '../../../../../words/marks.ts';
import { reviewWords } from '../../../../../words/review.ts';
import compared from '../_compare/compare.module.css';
import { CompareBar } from '../_compare/compare-bar.tsx';
import { ComparePane } from '../_compare/compare-pane.tsx';
import type { ComparableHere } from '../_compare/use-comparable.ts';
import { useCompare } from '../_compare/use-compare.ts';
import { frameOfMoment, markAt } from '../_marking/marking.ts';
import type { ClipMarking } from '../_marking/use-marking.ts';
import { FilmStrip } from '../_stage/film-strip.tsx';
import { KeysSheet } from '../_stage/keys-sheet.tsx';
import { type LineKind, linesOfView, overlayLines } from '../_stage/overlay-lines.ts';
import styles from '../_stage/stage.module.css';
import { Stage } from '../_stage/stage.tsx';
import { StageMoves } from '../_stage/stage-moves.tsx';
import { StageOptions } from '../_stage/stage-options.tsx';
import { Suggested } from '../_stage/suggested.tsx';
import { usePlay } from '../_stage/use-play.ts';
import type { StageView } from '../_stage/use-stage.ts';
import type { Trail } from '../_stage/use-trail.ts';
import { partOf } from '../_stage/view-part.ts';
import talking from '../_talk/talk.module.css';
import { TalkLayer } from '../_talk/talk-layer.tsx';
import { TalkPanel } from '../_talk/talk-panel.tsx';
import { useTalk } from '../_talk/use-talk.ts';
import { actsOf } from './acts-of.ts';
import type { AskingHere } from './use-asking.ts';
import { useDeskKeys } from './use-desk-keys.ts';
import type { WithReply } from './with-reply.ts';

type Clip = Reply<'readClip'>;
type Props = {
  submissionId: string;
  clip: Clip & { media: NonNullable<Clip['media']>; picture: NonNullable<Clip['picture']> };
  marking: ClipMarking;
  stage: StageView;
  asking: AskingHere;
  trail: Trail;
  pass: readonly Place[];
  comparable: ComparableHere;
  swing: { club: Reply<'readSubmission'>['club']; hand: 'right' | 'left' };
  canWork: boolean;
  onPutRight: () => void;
  withReply: WithReply;
};
const noTimes: readonly number[] = [];

/** The stage with everything under it that moves the picture. */
export function StageSide(props: Props) {
  const { clip, marking, stage, asking, trail, pass, comparable, swing, canWork, onPutRight, withReply } =
    props;
  const { picture, view } = clip;
  const opening = useClip(clip.media.rendition);
  const open = opening.kind === 'open' ? opening.clip : null;
  const { marks } = marking.content;
  const { frame, zoom } = stage;
  const whole = useRef<HTMLDivElement>(null);
  const [hidden, setHidden] = useState<ReadonlySet<LineKind>>(new Set());
  const [sheet, setSheet] = useState(false);
  const [keysOn, setKeysOn] = useKept('ballfirst.keys', true);
  const impact = frameOfMoment(marks, 'impact');
  const timesS = open?.timesS ?? noTimes;
  const play = usePlay(stage, timesS, impact);
  const compare = useCompare({ comparable, clip, ...swing, marks, timesS });
  const talk = useTalk(props.submissionId, clip.id, stage);
  const { onTalk, talkGoes, onFilm } = withReply;
  const talkMs = talk.stored?.durationMs ?? null;
  useEffect(() => onTalk(talkMs), [onTalk, talkMs]);
  const other = compare.on ? compare.chosen : null;
  const part = useMemo(() => partOf(picture, zoom), [picture, zoom]);
  const kinds = linesOfView(view);
  const lines = overlayLines(marks, view, asking.moment, picture).filter(({ kind }) => !hidden.has(kind));
  const shown = trail.on
    ? []
    : [...asking.carried, ...asking.suggested, ...marks.filter((mark) => mark.frame === frame)];
  const positions = [...new Set(pass.map(({ position }) => position))];
  const { target } = asking;
  const asks =
    target === null || !canWork || open === null
      ? null
      : `${markAt(marks, target) === undefined ? reviewWords.placeNext : reviewWords.placeAgain} ${pointNames[target.point]}, ${positionNames[target.position]}`;
  // While the clubhead is followed, a click places it and no other mark.
  const taps = trail.on
    ? { ...asking, ...{ place: trail.place, aim: null, held: null, aiming: false } }
    : asking;
  const fullScreen = () => {
    if (document.fullscreenElement === null) whole.current?.requestFullscreen().catch(() => undefined);
    else document.exitFullscreen().catch(() => undefined);
  };
  const onLine = (kind: LineKind) =>
    setHidden((now) => {
      const next = new Set(now);
      if (!next.delete(kind)) next.add(kind);
      return next;
    });
  const onLines = () => setHidden((now) => new Set(now.size > 0 ? [] : kinds));

  useDeskKeys({
    acts: actsOf({
      ...{ stage, asking, marking, positions, play, part, canWork },
      heard: clip.suggestion?.impact?.frame ?? null,
      ...{ onLines, fullScreen, onCompare: compare.toggle, onFilm },
    }),
    play,
    active: keysOn && !sheet,
    onSheet: () => setSheet(true),
    onPutRight,
  });

  return (
    <div ref={whole} className={styles.whole}>
      <div className={compared.two} data-on={other !== null}>
        <div className={talking.over}>
          <Stage
            pictures={open?.pictures ?? null}
            size={picture}
            stage={stage}
            part={part}
            shown={shown}
            lines={lines}
            asking={taps}
            asks={trail.on && open !== null ? hintWords.trailAsks : asks}
            trail={trail.trail}
            canWork={canWork}
          />
          {talk.recorder.state === 'recording' && <TalkLayer talk={talk} part={part} stage={stage} />}
        </div>
        {other !== null && other.clip.picture !== null && (
          <ComparePane
            compare={compare}
            other={other}
            size={other.clip.picture}
            here={{ timesS, size: picture }}
            stage={stage}
            moment={asking.moment}
            hidden={hidden}
          />
        )}
      </div>
      <div className={styles.bench}>
        {opening.kind === 'opening' && <p role="status">{reviewWords.opening}</p>}
        {opening.kind === 'failed' && <p role="alert">{reviewWords.failed}</p>}
        {open !== null && (
          <>
            {compare.on && <CompareBar compare={compare} />}
            {clip.suggestion !== null && (
              <Suggested
                suggestion={clip.suggestion}
                strip={clip.media.strip}
                size={picture}
                frame={frame}
                last={stage.last}
                onFrame={stage.goTo}
              />
            )}
            <StageMoves stage={stage} timesS={open.timesS} play={play} impactKnown={impact !== null} />
            <StageOptions
              stage={stage}
              kinds={kinds}
              hidden={hidden}
              onLine={onLine}
              onFullScreen={fullScreen}
              onKeys={() => setSheet(true)}
              compare={compare}
            />
            <FilmStrip
              pictures={open.pictures}
              size={picture}
              frame={frame}
              marks={marks}
              positions={positions}
              sought={target?.position ?? null}
              onFrame={stage.goTo}
            />
            <TalkPanel talk={talk} clip={clip} goes={talkGoes} canWork={canWork} />
            {!open.pictures.exact && <p className="small">{reviewWords.inexact}</p>}
          </>
        )}
        <p id="stage-help" className="small">
          {reviewWords.stageHelp}
        </p>
      </div>
      <KeysSheet open={sheet} setOpen={setSheet} on={keysOn} setOn={setKeysOn} />
    </div>
  );
}
