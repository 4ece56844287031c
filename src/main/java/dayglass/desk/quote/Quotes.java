package dayglass.desk.quote;

import dayglass.base.VersionedCollection;

/** Every quote; none is ever removed, and the database takes no number but the next. */
public interface Quotes extends VersionedCollection<Quote.Id, Quote> {
    /** The number that the next one has, as long as the transaction lasts. */
    long nextNumber();
}
