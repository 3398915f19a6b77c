/** A file of a card that cannot be drawn, now or later: a post with it is given up and told, not tried again. */
export class UndrawnFile extends Error {}
