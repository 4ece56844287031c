package dayglass.inventory;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import java.util.List;
import java.util.Optional;

/** Every unit on the shelf; tags are unique, serials within a model. */
public interface Units extends VersionedCollection<Unit.Id, Unit> {
    Optional<Stored<Unit.Id, Unit>> tagged(String tag);

    /** Those still here of which each word is part of the tag, the serial or the model's name; exact tags and serials first. */
    List<Stored<Unit.Id, Unit>> matching(List<String> words, int most);
}
