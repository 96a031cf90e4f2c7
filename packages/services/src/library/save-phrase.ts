import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { keyOfVariable, plainVariables, variablesIn } from '@ballfirst/library/phrase-variables';
import { isMeasurementKey } from '@ballfirst/swing/definitions/measurement-names';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { phraseOf } from './phrase-of.ts';

const isKnown = (name: string): boolean => {
  const key = keyOfVariable(name);
  return key === null ? plainVariables.some((one) => one === name) : isMeasurementKey(key);
};

/** @throws ProblemError bad-request for a variable no swing could fill, or a brace that belongs to none */
const checkVariables = (text: string): void => {
  const unknown = variablesIn(text).find((name) => !isKnown(name));
  const left = text.replaceAll(/\{[a-z]+(:[a-z-]+)?\}/g, '');
  if (unknown === undefined && !/[{}]/.test(left)) return;
  const message =
    unknown === undefined
      ? 'A brace is left over: write a variable as in {club}.'
      : `Nothing can be filled in for {${unknown}}.`;
  throw new ProblemError('bad-request', message, [{ path: 'text', message }]);
};

/** Keeps a phrase, for oneself or for all coaches of the academy. @throws ProblemError bad-request */
export const savePhrase = async ({ ctx, input }: Call<'savePhrase'>): Promise<Reply<'savePhrase'>> => {
  const { membershipId } = requireStaff(ctx);
  const { about, text, whose } = input;
  checkVariables(text);
  return once(ctx, 'savePhrase', async (tx) => {
    const row = await tx.libraryItem.create({
      data: {
        ...{ academyId: ctx.academyId, kind: 'phrase', key: newId(), version: 1 },
        ...{ content: { about, text, owner: whose === 'own' ? membershipId : null } },
        at: ctx.resources.clock.now(),
      },
    });
    await audit(tx, ctx, { action: 'save-phrase', subject: `phrase:${row.key}`, detail: { whose } });
    return phraseOf(row);
  });
};
