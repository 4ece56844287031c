package dayglass.inventory.booking;

import dayglass.base.VersionedCollection;

/** Every hold, lapsed ones too. */
public interface Holds extends VersionedCollection<Hold.Id, Hold> {}
