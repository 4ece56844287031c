package dayglass.inventory;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.catalogue.LensModel;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Every set on the shelf; names are unique, and a unit is in one set at most. */
public interface LensSets extends VersionedCollection<LensSet.Id, LensSet> {
    Optional<Stored<LensSet.Id, LensSet>> named(String name);

    /** Those with members of which each word is part of the name, by name. */
    List<Stored<LensSet.Id, LensSet>> matching(List<String> words, int most);

    /** The set that a unit is in now. */
    Optional<Stored<LensSet.Id, LensSet>> holding(Unit.Id unit);

    /** Those of which a member is one of some units or of some models, by id. */
    List<Stored<LensSet.Id, LensSet>> with(Set<LensModel.Id> models, Set<Unit.Id> units);

    /** Who was in it from when to when, by the time of joining. */
    List<LensSet.Membership> history(LensSet.Id set);

    /** In which sets a unit was from when to when, by the time of joining. */
    List<Joined> historyOf(Unit.Id unit);

    /** A unit's time in a set, by the name that the set has now. */
    record Joined(String set, LensSet.Membership membership) {}
}
