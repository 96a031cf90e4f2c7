import { AnsweredProblem, answerOf, ifMatch } from '@ballfirst/contracts/client';
import { api } from '../../../../../http/browser-api.ts';
import type { Content, Marking } from './marking.ts';

type Where = { readonly id: string; readonly clipId: string };
/** `changed`: somebody stored another version meanwhile; nothing was overwritten. */
type Saved = { readonly kind: 'saved' | 'changed'; readonly stored: Marking };

/** Stores the marking of a clip, or gives what somebody else stored. @throws AnsweredProblem */
export const saveMarking = async (path: Where, version: number, content: Content): Promise<Saved> => {
  try {
    const { marking } = await answerOf(
      api.PUT('/api/submissions/{id}/clips/{clipId}/marks', {
        params: { path, header: { 'If-Match': ifMatch(version) } },
        body: {
          marks: [...content.marks],
          observations: [...content.observations],
          trail: [...(content.trail ?? [])],
        },
      }),
    );
    return { kind: 'saved', stored: marking };
  } catch (error) {
    if (!(error instanceof AnsweredProblem) || error.code !== 'changed-meanwhile') throw error;
    const of = { params: { path } };
    return {
      kind: 'changed',
      stored: await answerOf(api.GET('/api/submissions/{id}/clips/{clipId}/marks', of)),
    };
  }
};
