export { share, shareable } from '#store/keep/share.ts';
export { askToLast, room, type Room } from '#store/keep/room.ts';
