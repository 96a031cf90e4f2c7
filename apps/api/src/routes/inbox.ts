import { acknowledgePain } from '@ballfirst/services/inbox/acknowledge-pain';
import { askToFilmAgain } from '@ballfirst/services/inbox/ask-to-film-again';
import { claimSubmission } from '@ballfirst/services/inbox/claim-submission';
import { readInbox } from '@ballfirst/services/inbox/read-inbox';
import { releaseSubmission } from '@ballfirst/services/inbox/release-submission';
import { type Mounting, mount } from '../door/mount.ts';

export const inboxRoutes = (at: Mounting): void => {
  mount(at, 'readInbox', readInbox);
  mount(at, 'claimSubmission', claimSubmission);
  mount(at, 'releaseSubmission', releaseSubmission);
  mount(at, 'acknowledgePain', acknowledgePain);
  mount(at, 'askToFilmAgain', askToFilmAgain);
};
