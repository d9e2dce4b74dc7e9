/** The day on the device, as `2026-11-25`. The core knows no clock, so the page reads it. */
export function today(now = new Date()): string {
  const two = (part: number) => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
