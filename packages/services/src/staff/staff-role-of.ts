/** The role of a staff member as stored. @throws RangeError for a student's */
export const staffRoleOf = (role: string): 'coach' | 'manager' => {
  if (role !== 'coach' && role !== 'manager') throw new RangeError('Not a role of the staff.');
  return role;
};
