/** Languages with a full set of catalogues, in the order a person is offered them. */
export const languages = ['en'] as const;
export type Language = (typeof languages)[number];

/** The language everything is said and written in. Reading `tag` in a component makes it follow a change. */
class Spoken {
  tag = $state<Language>('en');
}

export const spoken = new Spoken();
