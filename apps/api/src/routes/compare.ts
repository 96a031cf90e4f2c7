import { endModelSwing } from '@ballfirst/services/compare/end-model-swing';
import { keepModelSwing } from '@ballfirst/services/compare/keep-model-swing';
import { listComparable } from '@ballfirst/services/compare/list-comparable';
import { listModelSwings } from '@ballfirst/services/compare/list-model-swings';
import { type Mounting, mount } from '../door/mount.ts';

export const compareRoutes = (at: Mounting): void => {
  mount(at, 'listComparable', listComparable);
  mount(at, 'listModelSwings', listModelSwings);
  mount(at, 'keepModelSwing', keepModelSwing);
  mount(at, 'endModelSwing', endModelSwing);
};
