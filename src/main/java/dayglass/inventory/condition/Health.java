package dayglass.inventory.condition;

import java.util.Locale;

/** What the findings that stand say of a unit, from best to worst. */
public enum Health {
    HEALTHY,
    /** It may go out; whoever takes it is told. */
    WARNING,
    /** It is not to be promised. */
    NOT_HEALTHY;

    /** What one finding says while it stands. */
    public static Health of(Severity severity, boolean quarantine) {
        if (quarantine || severity.compareTo(Severity.NOT_HEALTHY_FROM) >= 0) {
            return NOT_HEALTHY;
        }
        return severity == Severity.NONE ? HEALTHY : WARNING;
    }

    /** As it is written: {@code not healthy}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
