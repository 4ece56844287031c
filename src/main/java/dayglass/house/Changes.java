package dayglass.house;

import dayglass.base.Stored;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Who changed what: kept with each change, never altered. */
public interface Changes {
    /** By id, in order. */
    List<Stored<Change.Id, Change>> list(Of of, Optional<Change.Id> after, int most);

    /** The newest first. */
    List<Stored<Change.Id, Change>> newest(Of of, int most);

    /**
     * Which changes.
     *
     * @param noun of things of this kind only
     * @param thing of things with this number only
     */
    record Of(Optional<String> noun, OptionalLong thing) {
        public static final Of ALL = new Of(Optional.empty(), OptionalLong.empty());
    }
}
