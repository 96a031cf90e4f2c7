import { captionTalkThrough } from '@ballfirst/services/talk-through/caption-talk-through';
import { dropTalkThrough } from '@ballfirst/services/talk-through/drop-talk-through';
import { readTalkThrough } from '@ballfirst/services/talk-through/read-talk-through';
import { saveTalkThrough } from '@ballfirst/services/talk-through/save-talk-through';
import { type Mounting, mount } from '../door/mount.ts';

export const talkThroughRoutes = (at: Mounting): void => {
  mount(at, 'readTalkThrough', readTalkThrough);
  mount(at, 'saveTalkThrough', saveTalkThrough);
  mount(at, 'captionTalkThrough', captionTalkThrough);
  mount(at, 'dropTalkThrough', dropTalkThrough);
};
