import { acknowledgePain } from '@ballfirst/services/inbox/acknowledge-pain';
import { askToFilmAgain } from '@ballfirst/services/inbox/ask-to-film-again';
import { claimConcern } from '@ballfirst/services/inbox/claim-concern';
import { claimNext } from '@ballfirst/services/inbox/claim-next';
import { claimSubmission } from '@ballfirst/services/inbox/claim-submission';
import { closeConcern } from '@ballfirst/services/inbox/close-concern';
import { handOverSubmission } from '@ballfirst/services/inbox/hand-over-submission';
import { listCoaches } from '@ballfirst/services/inbox/list-coaches';
import { readInbox } from '@ballfirst/services/inbox/read-inbox';
import { readInboxLoad } from '@ballfirst/services/inbox/read-inbox-load';
import { releaseConcern } from '@ballfirst/services/inbox/release-concern';
import { releaseSubmission } from '@ballfirst/services/inbox/release-submission';
import { type Mounting, mount } from '../door/mount.ts';

export const inboxRoutes = (at: Mounting): void => {
  mount(at, 'readInbox', readInbox);
  mount(at, 'readInboxLoad', readInboxLoad);
  mount(at, 'listCoaches', listCoaches);
  mount(at, 'claimNext', claimNext);
  mount(at, 'claimSubmission', claimSubmission);
  mount(at, 'releaseSubmission', releaseSubmission);
  mount(at, 'handOverSubmission', handOverSubmission);
  mount(at, 'acknowledgePain', acknowledgePain);
  mount(at, 'askToFilmAgain', askToFilmAgain);
  mount(at, 'claimConcern', claimConcern);
  mount(at, 'releaseConcern', releaseConcern);
  mount(at, 'closeConcern', closeConcern);
};
