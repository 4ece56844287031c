package dayglass.support;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** Units put into a database by themselves, for tests of what is said about them. */
public final class UnitRows {
    private UnitRows() {}

    /** Adds a unit of which only its tag is known. */
    public static void add(Path database, String tag) {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + database);
                PreparedStatement insert = connection.prepareStatement(
                        "INSERT INTO unit (version, tag, holding, facts_json) VALUES (1, ?, 'owned', '{}')")) {
            connection.createStatement().execute("PRAGMA busy_timeout = 10000");
            insert.setString(1, tag);
            insert.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
