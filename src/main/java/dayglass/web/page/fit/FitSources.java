package dayglass.web.page.fit;

import dayglass.catalogue.Cameras;
import dayglass.catalogue.LensModels;
import dayglass.catalogue.OwnMounts;

/** What a fit can be asked of and on. */
public record FitSources(LensModels models, Cameras cameras, OwnMounts mounts) {}
