import { ClipStatus } from '@ballfirst/contracts/words';
import type { z } from 'zod';
import type { ClipRow } from '../rows.ts';

/** What the door of uploads needs to know of a file on its way, be it a clip or a photo. */
export type Arrival = { readonly id: string; readonly status: z.output<typeof ClipStatus> };

export const arrivalOf = ({ id, status }: ClipRow): Arrival => ({ id, status: ClipStatus.parse(status) });
