package dayglass.house;

import dayglass.base.VersionedCollection;

/** Everybody who acts or acted in the house; names are unique. There is always somebody. */
public interface People extends VersionedCollection<Person.Id, Person> {}
