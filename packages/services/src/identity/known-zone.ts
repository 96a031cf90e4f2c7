/** Whether a name is a time zone this machine knows (IANA). */
export const knownZone = (zone: string): boolean => {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone });
    return true;
  } catch {
    return false;
  }
};
