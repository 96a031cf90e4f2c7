import { putGripPhoto } from '@ballfirst/services/grip-photo/put-grip-photo';
import { readGripPhoto } from '@ballfirst/services/grip-photo/read-grip-photo';
import { readGripPhotoOfSwing } from '@ballfirst/services/grip-photo/read-grip-photo-of-swing';
import { addClip } from '@ballfirst/services/submissions/add-clip';
import { correctSubmission } from '@ballfirst/services/submissions/correct-submission';
import { listSubmissions } from '@ballfirst/services/submissions/list-submissions';
import { readClip } from '@ballfirst/services/submissions/read-clip';
import { readSubmission } from '@ballfirst/services/submissions/read-submission';
import { sendSubmission } from '@ballfirst/services/submissions/send-submission';
import { type Mounting, mount } from '../door/mount.ts';

export const submissionsRoutes = (at: Mounting): void => {
  mount(at, 'sendSubmission', sendSubmission);
  mount(at, 'listSubmissions', listSubmissions);
  mount(at, 'readSubmission', readSubmission, (it) => it.version);
  mount(at, 'correctSubmission', correctSubmission, (it) => it.version);
  mount(at, 'addClip', addClip);
  mount(at, 'readClip', readClip);
  mount(at, 'readGripPhoto', readGripPhoto);
  mount(at, 'readGripPhotoOfSwing', readGripPhotoOfSwing);
  mount(at, 'putGripPhoto', putGripPhoto);
};
