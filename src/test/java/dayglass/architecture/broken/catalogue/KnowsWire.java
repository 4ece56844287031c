package dayglass.architecture.broken.catalogue;

import dayglass.architecture.broken.wire.Message;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class KnowsWire {
    Message known = new Message();
}
