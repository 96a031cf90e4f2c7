/** The one place where the site reads its environment. `API_URL`: the door on the loopback. */
export const env = {
  apiUrl: (process.env.API_URL ?? 'http://127.0.0.1:3000').replace(/\/+$/, ''),
} as const;
