package dayglass.architecture.broken.job;

import java.sql.Connection;
import java.sql.SQLException;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class SpeaksSql {
    static boolean open(Connection connection) throws SQLException {
        return !connection.isClosed();
    }
}
