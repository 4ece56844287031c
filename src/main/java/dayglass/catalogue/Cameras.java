package dayglass.catalogue;

import dayglass.base.VersionedCollection;

/** Every camera of the user's own; its mount is one that is known, published or the house's own. */
public interface Cameras extends VersionedCollection<Camera.Id, Camera> {}
