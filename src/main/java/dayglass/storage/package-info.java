/**
 * The database: one SQLite file, its migrations and transactions. Below it, one package a feature holds the adapters
 * that implement the feature's collections.
 *
 * <p>Never seen by {@code web}, and sees nothing of it.
 */
@NullMarked
package dayglass.storage;

import org.jspecify.annotations.NullMarked;
