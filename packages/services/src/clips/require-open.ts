import { ProblemError } from '@ballfirst/contracts/problems';

/** Closed for everybody, staff too, from the moment consent is withdrawn. @throws ProblemError consent-missing */
export const requireOpen = ({ status }: { readonly status: string }): void => {
  if (status !== 'erased') return;
  throw new ProblemError(
    'consent-missing',
    'The guardian has withdrawn consent. The videos of this student are closed and their files are removed.',
  );
};
