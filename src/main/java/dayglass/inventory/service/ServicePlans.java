package dayglass.inventory.service;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.inventory.Unit;
import java.util.Optional;

/** Every service plan; a unit has one at most. */
public interface ServicePlans extends VersionedCollection<ServicePlan.Id, ServicePlan> {
    Optional<Stored<ServicePlan.Id, ServicePlan>> of(Unit.Id unit);
}
