package dayglass.books.export;

import dayglass.base.VersionedCollection;

/** Every layout of the house. */
public interface Layouts extends VersionedCollection<Layout.Id, Layout> {}
