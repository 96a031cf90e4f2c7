'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useCallback, useEffect, useRef, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useSending } from '../../../../../http/use-sending.ts';
import { captionsFrom } from '../../../../../talk-through/captions-from.ts';
import { type Shown, type Track, withStep } from '../../../../../talk-through/record-track.ts';
import type { StageView } from '../_stage/use-stage.ts';
import { toBase64 } from './to-base64.ts';
import { type Recording, useRecorder } from './use-recorder.ts';

type Stored = Reply<'readTalkThrough'>['talkThrough'];
type Taken = Recording & { readonly track: Track; readonly clipId: string };
/** Shorter is a slip of the finger. */
const shortestMs = 500;

/** The talk-through of a swing: recorded while the stage is stepped, looked at closely and pointed at; kept at once. */
export const useTalk = (submissionId: string, clipId: string, stage: StageView) => {
  const [stored, setStored] = useState<Stored>(null);
  const [taken, setTaken] = useState<Taken | null>(null);
  const [tooShort, setTooShort] = useState(false);
  const [point, setPoint] = useState<Shown['point']>(null);
  const sending = useSending();
  const track = useRef<Track>([]);
  const params = { path: { id: submissionId } };
  useEffect(() => {
    let wanted = true;
    const of = { params: { path: { id: submissionId } } };
    answerOf(api.GET('/api/submissions/{id}/talk-through', of)).then(
      ({ talkThrough }) => wanted && setStored(talkThrough),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [submissionId]);

  const keep = async (one: Taken) => {
    setTaken(one);
    const done = await sending.run(async () => {
      const { durationMs, track: steps } = one;
      const body = {
        clipId: one.clipId,
        durationMs,
        track: steps,
        captions: [],
        sound: await toBase64(one.blob),
      };
      return answerOf(api.PUT('/api/submissions/{id}/talk-through', { params, body }));
    });
    if (done === null) return;
    setStored(done.answer);
    setTaken(null);
  };
  const recorder = useRecorder((recording) => {
    setPoint(null);
    if (recording.durationMs < shortestMs) return setTooShort(true);
    const steps = track.current.filter(({ atMs }) => atMs <= recording.durationMs);
    void keep({ ...recording, track: steps, clipId });
  });
  const { state, now, start } = recorder;
  const { frame, drawn, zoom } = stage;
  // What is seen counts: a frame that is still being decoded comes when it is drawn.
  const seen = drawn >= 0 ? drawn : frame;
  useEffect(() => {
    const atMs = state === 'recording' ? now() : null;
    if (atMs === null) return;
    const { times, x, y } = zoom;
    track.current = withStep(track.current, atMs, { frame: seen, times, x, y, point });
  }, [state, now, seen, zoom, point]);

  return {
    stored,
    taken,
    tooShort,
    sending,
    recorder,
    point,
    setPoint,
    begin: useCallback(() => {
      track.current = [];
      setTooShort(false);
      return start();
    }, [start]),
    keepAgain: () => taken !== null && keep(taken),
    drop: async () => {
      const drop = () => answerOf(api.DELETE('/api/submissions/{id}/talk-through', { params }));
      if ((await sending.run(drop)) !== null) setStored(null);
    },
    caption: async (text: string): Promise<boolean> => {
      const body = { captions: captionsFrom(text, stored?.durationMs ?? 0) };
      const put = () => answerOf(api.PUT('/api/submissions/{id}/talk-through/captions', { params, body }));
      const done = await sending.run(put);
      if (done !== null) setStored(done.answer);
      return done !== null;
    },
  };
};

export type Talk = ReturnType<typeof useTalk>;
