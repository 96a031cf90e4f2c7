import { AnsweredProblem, answerOf, ifMatch, type Reply } from '@ballfirst/contracts/client';
import { api } from '../../../../../http/browser-api.ts';
import { type Content, type Marking, mergeMarking, type Touched } from './marking.ts';

type Where = { readonly id: string; readonly clipId: string };
type Saved = Reply<'saveMarks'> & { readonly merged: boolean };

const mostMerges = 4;

const put = (path: Where, version: number, content: Content) =>
  answerOf(
    api.PUT('/api/submissions/{id}/clips/{clipId}/marks', {
      params: { path, header: { 'If-Match': ifMatch(version) } },
      body: { marks: [...content.marks], observations: [...content.observations] },
    }),
  );

const read = (path: Where): Promise<Marking> =>
  answerOf(api.GET('/api/submissions/{id}/clips/{clipId}/marks', { params: { path } }));

/**
 * Saves the marking of a clip. Where somebody stored another version meanwhile it is read again, what was touched here
 * is laid over it, and that is saved.
 * @throws AnsweredProblem
 */
export const saveMarking = async (
  path: Where,
  version: number,
  content: Content,
  touched: Touched,
): Promise<Saved> => {
  let base = { version, content };
  for (let merges = 0; ; merges += 1) {
    try {
      return { ...(await put(path, base.version, base.content)), merged: merges > 0 };
    } catch (error) {
      const changed = error instanceof AnsweredProblem && error.code === 'changed-meanwhile';
      if (!changed || merges === mostMerges) throw error;
      const stored = await read(path);
      base = { version: stored.version, content: mergeMarking(stored, content, touched) };
    }
  }
};
