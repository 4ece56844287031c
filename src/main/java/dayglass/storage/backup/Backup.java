package dayglass.storage.backup;

import dayglass.inventory.picture.Picture;
import dayglass.inventory.picture.PictureType;
import dayglass.storage.Database;
import dayglass.storage.picture.DurableFile;
import dayglass.storage.picture.PictureFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.sqlite.SQLiteConfig;

/**
 * Copies a database and its pictures while it may be served. The database comes first, as it stands at one moment; a
 * picture's file is there before its row is, so every picture that the copy names can be copied after it.
 *
 * @param database the copy, beside which its pictures lie
 * @param pictures how many are whole in it
 * @param missing the pictures that the database names and that are gone or damaged
 */
public record Backup(Path database, int pictures, List<String> missing) {
    public Backup {
        missing = List.copyOf(missing);
    }

    /** It cannot be made; the message says why. */
    public static final class Impossible extends Exception {
        private static final long serialVersionUID = 1;

        Impossible(String message) {
            super(message);
        }
    }

    /**
     * Makes a copy.
     *
     * @param folder made where there is none; never written into where there is anything in it
     */
    public static Backup make(Path databaseFile, Path folder) throws Impossible {
        if (!Files.isRegularFile(databaseFile)) {
            throw new Impossible("There is no database " + databaseFile + ".");
        }
        try {
            requireEmpty(folder);
            Path copy = folder.resolve(String.valueOf(databaseFile.getFileName()));
            Database.copy(databaseFile, copy);
            return withPictures(databaseFile, copy);
        } catch (IOException | SQLException cause) {
            throw new Impossible("The backup in " + folder + " is not whole: " + cause.getMessage());
        }
    }

    private static void requireEmpty(Path folder) throws IOException, Impossible {
        Files.createDirectories(folder);
        try (Stream<Path> files = Files.list(folder)) {
            if (files.findAny().isPresent()) {
                throw new Impossible(folder + " is not empty: name a new folder, so that no older backup is lost.");
            }
        }
    }

    private static Backup withPictures(Path from, Path copy) throws IOException, SQLException {
        List<String> missing = new ArrayList<>();
        int whole = 0;
        for (Picture picture : named(copy)) {
            Path place = PictureFolder.placeOf(picture);
            Path original = PictureFolder.folderOf(from).resolve(place);
            byte[] bytes = Files.exists(original) ? Files.readAllBytes(original) : new byte[0];
            if (PictureFolder.sha256(bytes).equals(picture.sha256())) {
                DurableFile.write(PictureFolder.folderOf(copy).resolve(place), bytes);
                whole++;
            } else {
                missing.add(original.toString());
            }
        }
        return new Backup(copy, whole, missing);
    }

    /** The pictures that the copy names; none where it is older than pictures are. */
    private static List<Picture> named(Path copy) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        List<Picture> pictures = new ArrayList<>();
        try (Connection connection = config.createConnection("jdbc:sqlite:" + copy.toAbsolutePath());
                Statement statement = connection.createStatement()) {
            if (!statement
                    .executeQuery("SELECT 1 FROM sqlite_master WHERE name = 'condition_picture'")
                    .next()) {
                return List.of();
            }
            ResultSet rows = statement.executeQuery(
                    "SELECT DISTINCT sha256, media_type, width, height FROM condition_picture ORDER BY sha256");
            while (rows.next()) {
                pictures.add(new Picture(
                        rows.getString(1),
                        PictureType.of(rows.getString(2)).orElseThrow(),
                        rows.getInt(3),
                        rows.getInt(4)));
            }
        }
        return pictures;
    }
}
