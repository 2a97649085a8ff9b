// A static page: the shell is prerendered, the work happens on the device.
export const prerender = true;
export const ssr = false;
