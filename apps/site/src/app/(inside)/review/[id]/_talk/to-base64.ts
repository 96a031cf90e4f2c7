/** The bytes of a recording as the service takes them. */
export const toBase64 = async (blob: Blob): Promise<string> => {
  const address = await new Promise<string>((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(new Error('The recording cannot be read.'));
    reader.readAsDataURL(blob);
  });
  return address.slice(address.indexOf(',') + 1);
};
