'use client';
import { createClient } from '@ballfirst/contracts/client';

/** The client of the browser: it writes and reads at the same origin, through the door. */
export const api = createClient({ baseUrl: '' });
